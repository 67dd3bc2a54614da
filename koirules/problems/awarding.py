"""Problems of occasions: the table of prizes, the votes of judges, and decisions about ties."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Cell, Place, Problem, Site
from koirules.problems.quoting import in_words, quoted, visible


def prize_table_unread(file: str, line: int, column: int, why: str) -> Problem:
    """A table of prizes is not TOML."""
    return Problem(
        "prize-table-unread",
        Place(file, line, column, line, column + 1),
        f"The table cannot be read: {visible(why)}.",
        "A line of a table is `key = value`, with texts in quotes and lists in square brackets.",
    )


def prize_key_unknown(site: Site, where: str, key: str, near: str | None, known: Sequence[str]) -> Problem:
    """A table of prizes has a key that means nothing."""
    return Problem(
        "prize-key-unknown",
        site,
        f"Nothing is called {quoted(key)} {where}.",
        f"Did you mean {quoted(near)}?" if near else f"There can be: {', '.join(known)}.",
    )


def prize_key_missing(site: Site, where: str, key: str, what: str) -> Problem:
    """A table of prizes lacks something that has to be said."""
    return Problem("prize-key-missing", site, f"{quoted(key)} is missing {where}.", f"Write {what}.")


def prize_value_wrong(site: Site, where: str, key: str, got: str, expected: str) -> Problem:
    """A value of a table of prizes is of another kind than it should be."""
    return Problem("prize-value-wrong", site, f"{quoted(key)} {where} is {visible(got)}.", f"It must be {expected}.")


def fewer_without_fewest(site: Site, where: str) -> Problem:
    """It is said what happens with too few fish, and not how many are too few."""
    return Problem(
        "prize-key-missing",
        site,
        f'"if_fewer" stands {where}, but nothing says how many fish are enough.',
        "Write how many with `fewest = 3`, or leave if_fewer out.",
    )


def prize_named_twice(site: Site, name: str) -> Problem:
    """Two prizes have one name."""
    return Problem(
        "prize-named-twice", site, f"There is a prize {quoted(name)} already.", "Give one of the two another name."
    )


def prize_not_before(
    site: Site, where: str, name: str, is_later: bool, near: str | None, before: Sequence[str]
) -> Problem:
    """A prize names another one that does not stand above it."""
    if is_later:
        return Problem(
            "prize-name-unknown",
            site,
            f"The prize {quoted(name)}, named {where}, is given only afterwards.",
            "Put the prize that is given first above this one.",
        )
    mend = f"Did you mean {quoted(near)}?" if near else _listed("Above it stand", before)
    return Problem("prize-name-unknown", site, f"No prize is called {quoted(name)}, as it is named {where}.", mend)


def prize_name_unknown(site: Site, where: str, kind: str, name: str, near: str | None, known: Sequence[str]) -> Problem:
    """A size, group, grade, section, label or prize is named that is not there. kind: with its article."""
    mend = f"Did you mean {quoted(near)}?" if near else _listed("There are", known)
    return Problem("prize-name-unknown", site, f"{quoted(name)}, named {where}, is not the name of {kind}.", mend)


def prize_without_classes(site: Site, where: str, what: str) -> Problem:
    """A prize goes by classes, and the occasion names no class table."""
    return Problem(
        "prize-name-unknown",
        site,
        f"{quoted(what)} {where} goes by the classes, but the occasion names no class table.",
        'Write classes = "…" at the top: the name of a class table, or its file.',
    )


def section_worth_differs(site: Site, where: str, section: str, told: Sequence[str]) -> Problem:
    """A section that decides is worth other points in another standard."""
    return Problem(
        "prize-points-unlike",
        site,
        f"The section {quoted(section)}, which decides {where}, differs in worth: {visible('; '.join(told))}.",
        "Let the standards build on one page that has this section, or let votes decide.",
        warning=True,
    )


def scores_unlike(site: Site, where: str, told: Sequence[str]) -> Problem:
    """Whole scores of standards are compared whose most points differ."""
    return Problem(
        "prize-points-unlike",
        site,
        f"The score decides {where}, and the standards do not give the same points in all: {visible('; '.join(told))}.",
        "Go by a section that all of them share, such as `section body`, or let votes decide.",
        warning=True,
    )


def prize_to_lowest(site: Site, where: str, fish: Sequence[str], grades: Sequence[str]) -> Problem:
    """A prize places fish of the last grade, and does not say which grades it is for."""
    kept = ", ".join(f'"{name}"' for name in grades)
    many = f"{len(fish)} fish have" if len(fish) > 1 else "One fish has"
    listed = f"{', '.join(fish[:6])}{f' and {len(fish) - 6} more' if len(fish) > 6 else ''}"
    return Problem(
        "prize-to-lowest-grade",
        site,
        f"{many} the last grade of the rules and a place {where}: {visible(listed)}.",
        f"Write where = {{ grades = [{kept}] }} to keep such fish out; with all grades named they stay in.",
        warning=True,
    )


def votes_not_given(site: Site, where: str) -> Problem:
    """Votes decide, and no file of votes was given."""
    return Problem(
        "prize-votes-missing",
        site,
        f"Votes decide {where}, but no votes were given.",
        "Give them with --votes FILE: a table with the columns judge, fish and prize.",
    )


def awarding_columns(file: str, what: str, needed: Sequence[str], missing: Sequence[str]) -> Problem:
    """A table of votes or of decisions lacks columns."""
    return Problem(
        "prize-columns",
        Cell(file),
        f"{what} need the columns {in_words(needed, 'and')}; there is no {', no '.join(missing)}.",
        "Put these headings into the first row.",
    )


def awarding_column_unknown(file: str, row: int, what: str, heading: str, known: Sequence[str]) -> Problem:
    """A table of votes or of decisions has a column that means nothing."""
    return Problem(
        "prize-columns",
        Cell(file, row, heading),
        f"{what} have no column {quoted(heading)}.",
        f"The columns are: {', '.join(known)}.",
    )


def awarded_fish_unknown(file: str, row: int, fish: str, near: str | None) -> Problem:
    """A vote or a decision is about a fish that was not graded."""
    return Problem(
        "prize-fish-unknown",
        Cell(file, row, "fish"),
        f"There is no graded fish {quoted(fish)}.",
        f"Did you mean {quoted(near)}?" if near else "Take the names from the record sheet.",
    )


def awarding_cell_blank(file: str, row: int, column: str, mend: str) -> Problem:
    """A row of votes or decisions leaves something out that it must say."""
    return Problem("prize-cell-blank", Cell(file, row, column), f"The column {quoted(column)} is blank.", mend)


def prize_decided_twice(file: str, row: int, prize: str, fish: str) -> Problem:
    """Two decisions about one fish in one prize."""
    return Problem(
        "prize-decided-twice",
        Cell(file, row, "fish"),
        f"There is a decision about {quoted(fish)} in the prize {quoted(prize)} already.",
        "Keep one of the two.",
    )


def prize_decision_idle(file: str, row: int, prize: str, fish: str) -> Problem:
    """A decision about a fish that is not tied."""
    return Problem(
        "prize-decision-idle",
        Cell(file, row, "fish"),
        f"The fish {quoted(fish)} is not tied for a place of the prize {quoted(prize)}, so there is nothing to decide.",
        "Check the names of the fish and of the prize, or delete the row.",
    )


def prize_decision_waits(file: str, row: int, prize: str, fish: str) -> Problem:
    """A decision about a fish of which nobody knows yet whether it is tied."""
    return Problem(
        "prize-decision-waits",
        Cell(file, row, "fish"),
        f"Whether the fish {quoted(fish)} is tied for a place of the prize {quoted(prize)} hangs on what is not settled yet, so "
        "this decision does nothing so far.",
        "Record what is open, or settle the prize that comes before; the row can stay for then.",
        warning=True,
    )


def voted_twice(file: str, row: int, judge: str, prize: str, among: str, before: int) -> Problem:
    """A judge has voted twice where there is one vote."""
    place = f" among {among}" if among else ""
    return Problem(
        "prize-voted-twice",
        Cell(file, row, "judge"),
        f"The judge {quoted(judge)} has voted for the prize {quoted(prize)}{place} in row {before} already.",
        "Keep one of the two rows: each judge has one vote.",
    )


def vote_idle(file: str, row: int, fish: str, prize: str) -> Problem:
    """A vote that counts nowhere."""
    told = f"for the prize {quoted(prize)}" if prize else "for a prize that goes by votes"
    return Problem(
        "prize-vote-idle",
        Cell(file, row, "fish"),
        f"The fish {quoted(fish)} is not in question {told}, so the vote does not count.",
        "Check the names of the fish and of the prize.",
        warning=True,
    )


def _listed(begin: str, names: Sequence[str]) -> str:
    shown = [visible(name) for name in names]
    more = f" and {len(shown) - 12} more" if len(shown) > 12 else ""
    return f"{begin}: {', '.join(shown[:12])}{more}." if shown else f"{begin} none."
