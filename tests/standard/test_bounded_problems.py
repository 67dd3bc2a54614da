"""However much is wrong with a file, its problems come soon and are few enough to be read."""

import koirules
from koirules.language.parse.cleaning import clean
from koirules.problems import StandardError
from koirules.standard.check.ordering import in_order
from koirules.vocabulary.nearness import near

HEAD = 'standard "Teal Yard house standard" edition 1 variety kohaku\n'
GRADES = "grade keep if length above 10 cm\ngrade cull otherwise\n"


def problems(text):
    try:
        koirules.read_standard(text)
    except StandardError as error:
        return error.problems
    return ()


def test_terms_that_all_read_one_another_are_one_circle():
    names = [f"t{i}" for i in range(60)]
    terms = "".join(f"term {name} means {' + '.join(other for other in names if other != name)}\n" for name in names)
    found = [problem for problem in problems(HEAD + terms + GRADES) if problem.code == "circle"]
    assert len(found) == 1


def test_a_long_circle_is_cut():
    terms = "".join(f"term t{i} means t{(i + 1) % 40} + 1\n" for i in range(40))
    (found,) = [problem for problem in problems(HEAD + terms + GRADES) if problem.code == "circle"]
    assert "t0 -> term t1" in found.cause
    assert "term t9 -> … -> term t0" in found.cause
    assert "t10" not in found.cause


def test_each_set_of_keys_has_its_circle():
    order, circles = in_order({"a": ["b"], "b": ["c"], "c": ["b", "d"], "d": ["d", "x"], "e": ["a"]})
    assert order == ["d", "c", "b", "a", "e"]
    assert circles == [["d", "d"], ["b", "c", "b"]]


def test_many_keys_in_one_circle_do_not_take_long():
    many = 20_000
    _, circles = in_order({f"t{i}": [f"t{(i + 1) % many}", "t0"] for i in range(many)})
    assert circles == [["t0", "t0"]]


def test_stray_characters_are_one_problem_a_line():
    cleaned = clean("\u200ba\u200b\u200b\nb\n\ufeff\u200bc\n", "here")
    assert [problem.site.line for problem in cleaned.problems] == [1, 3]
    assert cleaned.lines[0] == " a  "


def test_many_unknown_traits_do_not_take_long():
    facts = ", ".join(f"lenght_{i:x} 1" for i in range(10_000))
    found = problems(f'{HEAD}{GRADES}sample "fish" with {facts}\n  stays open\n')
    assert sum(problem.code == "unknown-name" for problem in found) == 10_000


def test_only_the_first_unknown_names_are_guessed_at():
    faults = "".join(f"fault f{i} if lenght above {i + 1} cm: no better than cull\n" for i in range(80))
    found = [problem for problem in problems(HEAD + faults + GRADES) if problem.code == "unknown-name"]
    assert ["length" in problem.mend for problem in found] == [True] * 50 + [False] * 30


def test_near_names():
    assert near("lenght", ["width", "length"]) == "length"
    assert near("cover", ["hi_cover", "length"]) == "hi_cover"
    assert near("girth", ["hi_cover", "length"]) is None
    assert near("kiva", ["kiwa", "kiwi"]) == "kiwa"
