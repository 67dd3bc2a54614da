"""Files beside a list of prizes: the votes and decisions that go into it, and the tables that it is written as."""

from __future__ import annotations

import csv
import datetime
import json
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from koirules.classes.placing import GROUP, SIZE
from koirules.prizes.awarding import Ballot, Ruling
from koirules.prizes.listing import PrizeList
from koirules.prizes.occasion import SHOWN_AS
from koirules.problems import Problem
from koirules.problems import awarding as say
from koirules.records.columns import OWNER
from koirules.records.records import read_table
from koirules.records.safe_text import for_csv, for_workbook, without_controls
from koirules.records.table import Row, is_blank, text_of
from koirules.records.workbook import (
    close_workbook,
    height_for,
    open_workbook,
    print_across,
    styles_of,
    width_for,
    write_texts,
)
from koirules.vocabulary.plain_text import folded

_WHO = "Write a name or initials."


def read_ballots(path: Path) -> tuple[tuple[Ballot, ...], tuple[Problem, ...]]:
    """The votes of a file, one a row, with the columns judge, fish and prize (left out or blank: for every prize by votes)."""
    rows, problems = _rows(path, "Votes", ("judge", "fish"), ("prize",), {"judge": _WHO, "fish": "Write which fish."})
    return tuple(Ballot(row["judge"], row["fish"], row["prize"], number) for number, row in rows), problems


def read_rulings(path: Path) -> tuple[tuple[Ruling, ...], tuple[Problem, ...]]:
    """The decisions of a file about tied fish, with the columns prize, fish, by and reason."""
    needed = {
        "prize": "Write the name of the prize in which the fish are tied.",
        "fish": "Write which fish.",
        "by": _WHO,
        "reason": "Write why: it is shown wherever the decision is.",
    }
    rows, problems = _rows(path, "Decisions", tuple(needed), (), needed)
    found = (Ruling(row["prize"], row["fish"], row["by"], row["reason"], number) for number, row in rows)
    return tuple(found), problems


def _rows(
    path: Path, what: str, needed: Sequence[str], others: Sequence[str], mends: Mapping[str, str]
) -> tuple[list[tuple[int, dict[str, str]]], tuple[Problem, ...]]:
    table = read_table(path)
    columns: dict[str, int] = {}
    problems: list[Problem] = list(table.problems)
    for index, heading in enumerate(table.headings):
        name = folded(heading.text)
        if name in {*needed, *others} and name not in columns:
            columns[name] = index
        elif heading.text:
            known = (*needed, *others)
            problems.append(say.awarding_column_unknown(table.file, heading.row, what, heading.text, known))
    missing = [name for name in needed if name not in columns]
    if table.headings and missing:
        problems.append(say.awarding_columns(table.file, what, needed, missing))
    if problems:
        return [], tuple(problems)
    found: list[tuple[int, dict[str, str]]] = []
    for row in table.rows:
        told = {name: _told(row, columns.get(name)) for name in (*needed, *others)}
        if any(told.values()):
            found.append((row.number, told))
            blank = [name for name in needed if not told[name]]
            problems += [say.awarding_cell_blank(table.file, row.number, name, mends[name]) for name in blank]
    return found, tuple(problems)


def _told(row: Row, index: int | None) -> str:
    raw = None if index is None else row.cells[index]
    if raw is None or is_blank(raw):
        return ""
    return raw.isoformat() if isinstance(raw, datetime.date) else text_of(raw).strip()


def columns_of(listed: PrizeList, *, owners: bool) -> tuple[str, ...]:
    """The headings of a table of prizes. owners: whether it names them."""
    parts = dict.fromkeys(label for one in listed.placings for label in one.prize.for_each)
    first = [label for label in (GROUP, SIZE) if label in parts]
    others = [label for label in parts if label not in first]
    shown = ["prize", "title", *first, *others, "place", "fish"]
    shown += [] if "variety" in others else ["variety"]
    shown += [OWNER] if owners and listed.has_owners() and OWNER not in others else []
    return (
        *shown,
        "grade",
        "score",
        "among",
        "by",
        "shared",
        "decided by",
        "reason",
        "waits",
        "occasion",
        "date",
        "class table",
    )


def rows_of(listed: PrizeList, *, owners: bool) -> Iterator[tuple[str, ...]]:
    """The rows under `columns_of`: a row for each place that is given, and one for each fish that waits for one."""
    columns = columns_of(listed, owners=owners)
    about = {
        "occasion": listed.title,
        "date": str(listed.occasion.day),
        "class table": listed.class_words,
    }
    for one in listed.placings:
        for part in one.parts:
            whole = dict(zip(one.prize.for_each, part.names, strict=True))
            whole |= {"among": str(part.fish)}
            whole |= {"prize": one.prize.name, "title": listed.tongue.of(one.prize.title), **about}
            rows: list[dict[str, str]] = []
            for award in part.awards:
                row = {"place": str(award.place), "fish": award.fish, "by": ", ".join(award.standing)}
                row["shared"] = "yes" if award.shared else ""
                if award.ruling is not None:
                    row |= {"decided by": award.ruling.by, "reason": award.own_reason}
                rows.append(row)
            for wait in part.waiting:
                rows += [{"fish": fish, "by": ", ".join(wait.standing), "waits": wait.words} for fish in wait.fish]
            if not rows and part.note:
                rows.append({"waits": "", "reason": part.note})
            for row in rows:
                fish = row.get("fish", "")
                its = listed.grade_and_score(fish)
                known = {"variety": listed.variety(fish), OWNER: listed.told(fish, OWNER)}
                known |= {"grade": its.grade, "score": its.score}
                yield tuple({**known, **whole, **row}.get(column, "") for column in columns)


def write_prizes_csv(path: Path, listed: PrizeList, *, owners: bool) -> None:
    """Write the list as CSV in UTF-8; text that would begin a formula has an apostrophe before it."""
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(for_csv(_heading(column)) for column in columns_of(listed, owners=owners))
        writer.writerows([for_csv(cell) for cell in row] for row in rows_of(listed, owners=owners))


def write_prizes_xlsx(path: Path, listed: PrizeList, *, owners: bool) -> None:
    """Write the list as a workbook with the sheets `prizes`, `no class` (fish that are in none) and `occasion`."""
    workbook = open_workbook(path)
    styles = styles_of(workbook)
    columns = columns_of(listed, owners=owners)
    about = columns.index("occasion")  # the sheet `occasion` says it once
    sheets: list[tuple[str, tuple[str, ...], list[tuple[str, ...]]]] = [
        ("prizes", columns[:about], [row[:about] for row in rows_of(listed, owners=owners)]),
        ("no class", ("fish", "why"), [(one.fish, one.why) for one in listed.left]),
        ("occasion", ("what", "words"), list(_about(listed))),
    ]
    for name, headings, rows in sheets:
        sheet = workbook.add_worksheet(name)
        widths = [width_for([_heading(head), *(row[i] for row in rows)]) for i, head in enumerate(headings)]
        for column, width in enumerate(widths):
            sheet.set_column(column, column, width)
        sheet.freeze_panes(1, 0)
        print_across(sheet)
        write_texts(sheet, 0, [_heading(head) for head in headings], styles.header)
        place = headings.index("place") if "place" in headings else -1
        for number, row in enumerate(rows, 1):
            sheet.set_row(number, height_for(zip(row, widths, strict=True)))
            for column, cell in enumerate(row):
                if column == place and cell.isdigit():
                    sheet.write_number(number, column, int(cell), styles.beside)
                elif cell:
                    sheet.write_string(number, column, for_workbook(cell), styles.beside)
    close_workbook(workbook)


def _about(listed: PrizeList) -> Iterator[tuple[str, str]]:
    yield "occasion", listed.occasion.title
    yield "date", listed.occasion.told_day
    for note in listed.occasion.notes:
        yield "note", note
    if listed.table is not None:
        yield "class table", listed.class_words
    for one in listed.standards:
        yield "standard", f"{one.words}, seal {one.seal}"
    yield "records", listed.records


def _heading(column: str) -> str:
    return SHOWN_AS.get(column, column)


def write_prizes_json(path: Path, listed: PrizeList, *, owners: bool) -> None:
    """Write the list as objects."""
    text = json.dumps(_as_data(listed, owners=owners), ensure_ascii=False, indent=1)
    path.write_text(f"{text}\n", encoding="utf-8", newline="\n", errors="replace")


def _as_data(listed: PrizeList, *, owners: bool) -> dict[str, object]:
    occasion, table = listed.occasion, listed.table
    return {
        "title": without_controls(occasion.title),
        "date": str(occasion.day),
        "notes": list(occasion.notes),
        "class_table": None if table is None else {"title": table.title, "edition": table.edition},
        "standards": [{"title": one.title, "edition": one.edition, "seal": one.seal} for one in listed.standards],
        "records": listed.records,
        "no_class": [
            {"fish": without_controls(one.fish), "why": one.why, "may_win": one.may_win} for one in listed.left
        ],
        "prizes": [
            {
                "name": one.prize.name,
                "title": one.prize.title,
                "by": list(one.prize.by),
                "parts": [
                    {
                        "of": dict(zip(one.prize.for_each, part.names, strict=True)),
                        "fish": part.fish,
                        "note": part.note or None,
                        "places": [
                            {
                                "place": award.place,
                                "fish": without_controls(award.fish),
                                "variety": without_controls(listed.variety(award.fish)) or None,
                                **({OWNER: without_controls(listed.told(award.fish, OWNER)) or None} if owners else {}),
                                "grade": listed.grade_and_score(award.fish).grade or None,
                                "score": listed.grade_and_score(award.fish).score or None,
                                "by": list(award.standing),
                                "shared": award.shared,
                                "decided_by": award.ruling.by if award.ruling else None,
                                "reason": award.own_reason if award.ruling else None,
                            }
                            for award in part.awards
                        ],
                        "waiting": [
                            {
                                "why": wait.why.value,
                                "first": wait.first,
                                "last": wait.last,
                                "fish": [without_controls(fish) for fish in wait.fish],
                                "words": wait.words,
                            }
                            for wait in part.waiting
                        ],
                    }
                    for part in one.parts
                ],
                "no_fish_in": [dict(zip(one.prize.for_each, names, strict=True)) for names in one.empty],
                "not_parted": list(one.without),
            }
            for one in listed.placings
        ],
    }
