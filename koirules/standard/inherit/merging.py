"""A standard that is based on another one: the statements that hold when the changes of a file are made to its base.

What comes out is one list of statements, as if it were one file; each keeps the place where it was written.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Iterator

from attrs import evolve, field

from koirules.language import statements as st
from koirules.language.parse.comments import remarks_of
from koirules.language.syntax import Text, Title, Word
from koirules.problems import Place, Problem
from koirules.problems import sharing as say
from koirules.standard.check.header import said_of
from koirules.standard.inherit.based_on import chain_of
from koirules.standard.inherit.grades import placed_grades
from koirules.standard.inherit.names import grade_terms, in_names, respelt_in
from koirules.standard.parts import Rules
from koirules.standard.reading_nodes import traits_at
from koirules.standard.tree import walk
from koirules.values import define
from koirules.vocabulary.nearness import near
from koirules.vocabulary.wordings import tokens_of

_VALUES = frozenset({"setting", "trait", "term"})
"""The kinds that share one set of names."""


def head_of(statement: st.Part) -> str:
    """The head word of a statement."""
    match statement:
        case st.Extra(head=head) | st.Limit(head=head):
            return str(head)
        case st.HouseTrait():
            return "trait"
        case _:
            return type(statement).__name__.lower()


def name_of(statement: st.Part) -> str:
    """The name of a statement; of a sample its title, of a phrase its first wording."""
    return statement.title.text if isinstance(statement, st.Sample | st.Phrase) else statement.name.text


def name_place(statement: st.Part) -> Place:
    """Where a statement has its name."""
    return statement.title.place if isinstance(statement, st.Sample | st.Phrase) else statement.name.place


def one_by_one(statements: Iterable[st.Statement]) -> Iterator[st.Statement]:
    """Statements with what silence means of each trait in one of its own, as it is replaced and dropped."""
    for statement in statements:
        match statement:
            case st.Silence(entries=entries):
                yield from (st.Silence((entry,), entry.place) for entry in entries)
            case st.Replace(statement=st.Silence(entries=entries), place=place):
                yield from (st.Replace(st.Silence((entry,), entry.place), place) for entry in entries)
            case st.Carry(traits=traits):
                yield from (st.Carry((trait,), trait.place) for trait in traits)
            case _:
                yield statement


def alone(own: st.RuleFile, problems: list[Problem]) -> st.RuleFile:
    """The statements of a file that is based on nothing: `replace` and `drop` have nothing to change."""
    statements: list[st.Statement] = []
    known = not any(head == "standard" for head, _ in own.unread)
    for statement in one_by_one(own.statements):
        match statement:
            case st.Replace(statement=inner, place=place):
                if known:
                    problems.append(say.no_base(_word_at(place, "replace"), "replace", inner.place))
                if not isinstance(inner, st.Header):
                    statements.append(inner)
            case st.Drop(place=place):
                if known:
                    problems.append(say.no_base(place, "drop"))
            case st.Rename(place=place):
                if known:
                    problems.append(say.no_base(place, "rename"))
            case _:
                statements.append(statement)
    return evolve(own, statements=tuple(statements), remarks=remarks_of(own))


def merged(own: st.RuleFile, header: st.Header, base: Rules, problems: list[Problem]) -> st.RuleFile:
    """The statements of a file and its base together."""
    remarks = {**base.source.remarks, **remarks_of(own)}
    own = evolve(own, statements=tuple(one_by_one(own.statements)))
    merge = _Merge(own, base, problems)
    merge.rename()
    merge.drop()
    merge.replace()
    merge.add()
    whole = _header(header, base, problems)
    headers = [whole if each is header else each for each in own.statements if isinstance(each, st.Header)]
    body = merge.body()
    first = own.statements[0] is header  # else the checker says that the header comes first
    statements = (*headers, *body) if first else (*body[:1], *headers, *body[1:])
    bases = {**base.source.bases, base.file: base.source.text}
    chain = chain_of(header, base)
    replaced = {**base.source.replaced, **merge.replaced}
    respelt = {**base.source.respelt, **merge.respelt}
    unsaid = {**base.source.unsaid, base.file: _read_by(base) - base.silence.keys()}
    return evolve(
        own,
        statements=statements,
        bases=bases,
        replaced=replaced,
        respelt=respelt,
        chain=chain,
        remarks=remarks,
        unsaid=unsaid,
    )


def _read_by(base: Rules) -> frozenset[str]:
    """The traits that a standard reads."""
    nodes = (node for part in base.parts for root in part.roots for node in walk(root, into_sources=True))
    return frozenset(of.trait.name for node in nodes for of in traits_at(node))


def _header(own: st.Header, base: Rules, problems: list[Problem]) -> st.Header:
    """Title and edition are the file's own; varieties, stage, occasion and dates are those of the base where it says none."""
    inherited = next(each for each in base.source.statements if isinstance(each, st.Header))
    speaking = own if own.speaks is not None else inherited
    if own.speaks is not None and not _is_among(own, inherited):
        problems.append(say.other_variety(own.speaks.place, said_of(own), said_of(inherited)))
        speaking = inherited
    dates = own if own.valid_from is not None else inherited
    return evolve(
        own,
        varieties=speaking.varieties,
        any_variety=speaking.any_variety,
        skins=speaking.skins,
        stage=own.stage or inherited.stage,
        occasion=own.occasion or inherited.occasion,
        valid_from=dates.valid_from,
        valid_until=dates.valid_until,
        valid_place=dates.valid_place,
        based_on=None,
        notes=(*inherited.notes, *own.notes),
    )


def _is_among(own: st.Header, inherited: st.Header) -> bool:
    """Whether a base is for all varieties that a file names, with no skin that the file leaves out."""
    if inherited.speaks is None or inherited.any_variety is not None:
        return True
    if own.any_variety is not None or not _texts(inherited.skins) <= _texts(own.skins):
        return False
    return _texts(own.varieties) <= _texts(inherited.varieties)


def _texts(words: Iterable[Word]) -> set[str]:
    return {word.text for word in words}


def _word_at(place: Place, word: str) -> Place:
    return Place(place.file, place.line, place.column, place.line, place.column + len(word))


@define
class _Slot:
    """A statement of the base, and what becomes of it. section: the one that a criterion belongs to."""

    statement: st.Part
    section: str | None
    dropped: Place | None = None
    with_section: bool = False
    replaced: Place | None = None

    @property
    def key(self) -> tuple[str, str]:
        return head_of(self.statement), name_of(self.statement)


def _titles(statement: st.Part) -> tuple[Title, ...]:
    return statement.wordings if isinstance(statement, st.Phrase) else ()


def _without(title: Title, tokens: tuple[str, ...]) -> Title | None:
    """A wording without the text that reads as these words, in its own or in a further language; None where it is all."""
    if tokens_of(title.text) == tokens:
        return None
    others = {code: text for code, text in title.others.items() if tokens_of(text) != tokens}
    return evolve(title, others=others) if len(others) < len(title.others) else title


@define
class _Merge:
    """The changes of a file, made to the statements of its base: what is dropped, then replaced, then added."""

    own: st.RuleFile
    base: Rules
    problems: list[Problem]
    slots: list[_Slot] = field(init=False)
    index: dict[tuple[str, str], list[_Slot]] = field(init=False)
    replaced: dict[Place, Place] = field(factory=dict)
    renames: dict[tuple[str, str], str] = field(factory=dict)
    respelt: dict[Place, str] = field(factory=dict)
    added: list[st.Part] = field(factory=list)
    reopened: dict[str, list[st.Part]] = field(factory=dict)
    grades: list[st.Grade] = field(factory=list)
    taken: dict[tuple[str, ...], Place] = field(factory=dict)

    def __attrs_post_init__(self) -> None:
        self.slots = []
        section: str | None = None
        for statement in self.base.source.statements:
            if isinstance(statement, st.Header | st.Replace | st.Drop | st.Rename):
                continue
            if isinstance(statement, st.Section):
                section = statement.name.text
            belongs = section if isinstance(statement, st.Section | st.Points | st.Extra) else None
            self.slots.append(_Slot(statement, belongs))
        self._list()

    def _list(self) -> None:
        self.index = {}
        for slot in self.slots:
            self.index.setdefault(slot.key, []).append(slot)

    # ---- What goes by another name

    def rename(self) -> None:
        """Put the statements of the base into the names that the file gives its grades, all at once."""
        told: dict[str, st.Rename] = {}
        for statement in self.own.statements:
            if isinstance(statement, st.Rename) and self._found("grade", statement.name.text, statement.name.place):
                old = statement.name
                if told.setdefault(old.text, statement) is not statement:
                    self.problems.append(say.changed_twice(old.place, "grade", old.text, told[old.text].place))
        given = {
            name: slots[0].statement.place
            for (head, name), slots in self.index.items()
            if head == "grade" and (name not in told or told[name].to.text == name)
        }
        for name, one in told.items():
            if one.to.text in given:
                self.problems.append(say.renamed_to_taken(one.to.place, one.to.text, given[one.to.text]))
            else:
                self.renames["grade", name] = one.to.text
                given[one.to.text] = one.to.place
        terms = grade_terms(self.base.source.statements) if self.renames else ()
        for slot in self.slots if self.renames else ():
            before = slot.statement
            slot.statement = in_names(before, head_of(before), self.renames, terms)
            self.respelt.update(respelt_in(before, slot.statement))
            if isinstance(slot.statement, st.Grade) and name_of(slot.statement) != name_of(before):
                by = told[name_of(before)]
                slot.statement = evolve(slot.statement, name=by.to, title=by.title or slot.statement.title)
        self._list()

    # ---- What is dropped

    def drop(self) -> None:
        """Take out what the file drops, a section with its criteria."""
        for statement in self.own.statements:
            if not isinstance(statement, st.Drop):
                continue
            head, word = statement.head, statement.name
            if (head in {"sample", "phrase"}) != isinstance(word, Text):
                self.problems.append(say.dropped_by_name(word.place, head, word.text))
                continue
            if head == "phrase":
                self._take_wording(word.text, word.place)
                continue
            for slot in self._found(head, word.text, word.place):
                if slot.dropped is not None and not slot.with_section:
                    self.problems.append(say.changed_twice(word.place, head, word.text, slot.dropped))
                slot.dropped, slot.with_section = statement.place, False
                if head == "section":
                    self._drop_criteria(word.text, statement.place)

    def _drop_criteria(self, section: str, place: Place) -> None:
        for slot in self.slots:
            if slot.section == section and slot.dropped is None:
                slot.dropped, slot.with_section = place, True

    def _take_wording(self, wording: str, place: Place) -> None:
        """Take one wording out of the phrases of the base; a problem where it is in none."""
        found = self._wordings().get(tokens_of(wording))
        if found is None:
            known = [each.text for slot in self.slots for each in _titles(slot.statement)]
            self.problems.append(say.not_in_base(place, "phrase", wording, near(wording, known), None))
            return
        if isinstance(found, Place):
            self.problems.append(say.changed_twice(place, "phrase", wording, found))
            return
        phrase, tokens = found.statement, tokens_of(wording)
        if isinstance(phrase, st.Phrase):
            left = tuple(title for each in phrase.wordings if (title := _without(each, tokens)) is not None)
            found.statement = evolve(phrase, wordings=left) if left else phrase
            found.dropped = found.dropped if left else place
        self.taken[tokens] = place

    def _replace_wordings(self, phrase: st.Phrase) -> None:
        """Put a phrase in the place of those wordings of it that the base has: one at least."""
        said = [(text, title.place) for title in phrase.wordings for text in (title.text, *title.others.values())]
        known = self._wordings()
        for text, place in [each for each in said if tokens_of(each[0]) in known] or said[:1]:
            self._take_wording(text, place)
        self.added.append(phrase)

    def _wordings(self) -> dict[tuple[str, ...], _Slot | Place]:
        """The wordings of the base, each with its phrase, or with the place that took it out."""
        live = {
            tokens_of(text): slot
            for slot in self.slots
            if slot.dropped is None
            for title in _titles(slot.statement)
            for text in (title.text, *title.others.values())
        }
        return {**live, **self.taken}

    def _found(self, head: str, name: str, place: Place) -> list[_Slot]:
        """What the base has of a kind and name; a problem where there is nothing."""
        found = self.index.get((head, name), [])
        if not found:
            known = [slot.key[1] for slot in self.slots if slot.key[0] == head]
            other = next((slot.key[0] for slot in self.slots if slot.key[1] == name), None)
            meant = self.renames.get((head, name)) or near(name, known)
            self.problems.append(say.not_in_base(place, head, name, meant, other))
        return found

    # ---- What is replaced

    def replace(self) -> None:
        """Put the replacements of the file where the originals stood."""
        for statement in self.own.statements:
            match statement:
                case st.Replace(statement=st.Header(), place=place):
                    self.problems.append(say.replaced_header(_word_at(place, "replace standard")))
                case st.Replace(statement=inner) if not isinstance(inner, st.Header):
                    self._replace(inner)
                case _:
                    pass

    def _replace(self, statement: st.Part) -> None:
        head, name = head_of(statement), name_of(statement)
        place = name_place(statement)
        if isinstance(statement, st.Phrase):
            self._replace_wordings(statement)
            return
        if isinstance(statement, st.Grade) and statement.after is not None:
            self.problems.append(say.after_with_replace(statement.after.place))
            statement = evolve(statement, after=None)
        found = self._found(head, name, place)
        if not found:
            self.added.append(statement)  # so that its own mistakes are seen too
            return
        first, *others = found
        changed = first.dropped or first.replaced
        if changed is not None:
            self.problems.append(say.changed_twice(place, head, name, changed))
            return
        self._put(first, statement)
        for slot in others:  # samples of one title
            slot.dropped = statement.place

    def _put(self, slot: _Slot, statement: st.Part) -> None:
        self.replaced[statement.place] = slot.statement.place
        slot.statement, slot.replaced = statement, statement.place

    # ---- What is added

    def add(self) -> None:
        """Put what is new behind what the base has, and criteria into their sections."""
        current: str | None = None
        for statement in self.own.statements:
            match statement:
                case st.Replace(statement=st.Section(name=name)) | st.Section(name=name):
                    current = name.text
                case _:
                    pass
            if isinstance(statement, st.Header | st.Replace | st.Drop | st.Rename):
                continue
            is_bare = isinstance(statement, st.Section) and statement.title is None and statement.worth is None
            if (is_bare and self._live({"section"}, name_of(statement))) or self._is_there(statement):
                continue
            match statement:
                case st.Points() | st.Extra():
                    self._add_criterion(statement, current)
                case st.Grade():
                    self.grades.append(statement)
                case _:
                    self.added.append(statement)

    def _add_criterion(self, statement: st.Points | st.Extra, section: str | None) -> None:
        if section is not None and self._live({"section"}, section):
            self.reopened.setdefault(section, []).append(statement)
            return
        self.added.append(statement)
        # Criteria under a section whose own line could not be read are not homeless.
        if section is None and not any(head == "section" for head, _ in self.own.unread):
            known = [slot.key[1] for slot in self.slots if slot.key[0] == "section" and slot.dropped is None]
            self.problems.append(say.no_section_above(statement.place, head_of(statement), name_of(statement), known))

    def _live(self, heads: Iterable[str], name: str) -> _Slot | None:
        """What still holds of the base under a name."""
        named = (slot for head in heads for slot in self.index.get((head, name), ()))
        return next((slot for slot in named if slot.dropped is None), None)

    def _is_there(self, statement: st.Part) -> bool:
        """Whether the base has the name already: a problem, and from then on as if it were replaced."""
        head, name = head_of(statement), name_of(statement)
        if isinstance(statement, st.Phrase):
            return self._says_again(statement)
        slot = self._live(_VALUES if head in _VALUES else {head}, name)
        if slot is None:
            return False
        if slot.replaced is None:
            place = _word_at(statement.place, head)
            self.problems.append(say.already_in_base(place, slot.key[0], name, head, slot.statement.place))
        else:
            self.problems.append(say.changed_twice(name_place(statement), head, name, slot.replaced))
        self._put(slot, statement)
        return True

    def _says_again(self, phrase: st.Phrase) -> bool:
        """Whether the base has a wording of a phrase already: a problem."""
        known = self._wordings()
        again = False
        for title in phrase.wordings:
            slot = known.get(tokens_of(title.text))
            if isinstance(slot, _Slot):
                again, place = True, _word_at(phrase.place, "phrase")
                self.problems.append(say.already_in_base(place, "phrase", title.text, "phrase", slot.statement.place))
        return again

    # ---- What comes of it

    def body(self) -> list[st.Statement]:
        """All statements below the header."""
        held = [s.statement for s in self.slots if s.dropped is None and isinstance(s.statement, st.Grade)]
        grades = deque(placed_grades(held, self.grades, self.problems))
        last = {slot.section: i for i, slot in enumerate(self.slots) if slot.section is not None}
        body: list[st.Statement] = []
        for i, slot in enumerate(self.slots):
            if slot.dropped is None and isinstance(slot.statement, st.Grade):
                # A grade of the base stays in its place, and what comes after it goes with it.
                held.pop(0)
                while grades and not (held and grades[0] is held[0]):
                    body.append(grades.popleft())
            elif slot.dropped is None:
                body.append(slot.statement)
            if slot.section is not None and last[slot.section] == i:
                body.extend(self.reopened.get(slot.section, ()))
        return [*body, *self.added, *grades]
