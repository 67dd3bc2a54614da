"""What the words of the language are for, a line each."""

from __future__ import annotations

from koirules.meaning.aggregates import AGGREGATES
from koirules.meaning.expressions import BY_WORDS, FORMS

HEADS = {
    "standard": "The header: title, edition, variety, stage and occasion. It stands once, first.",
    "setting": "A number that a run may change, within its range.",
    "trait": "A trait of this house, beside those of the variety.",
    "term": "A name for an expression.",
    "section": "Opens a section with its worth; the points, bonus and penalty below belong to it.",
    "points": "A criterion: a curve over a number, or a table over words.",
    "bonus": "Points of the section that are added when a condition holds.",
    "penalty": "Points of the section that are taken when a condition holds.",
    "fault": "A cap: the best grade that is still possible when its condition holds.",
    "lift": "A floor: the lowest grade that is still possible when its condition holds.",
    "grade": "A grade and its condition, best first; the last one is `otherwise`.",
    "round": "A step of the selection over the batch.",
    "alert": "A word of warning about the batch as a whole; changes no grade.",
    "phrase": "Words that a sorter says, and what they mean; changes no grade.",
    "carry": "Traits that a new sorting takes over from the one before.",
    "panel": "How the records that several judges made of the same one are put together.",
    "silence": "What a trait is taken to be where a sorter did not mention it.",
    "sample": "An example that the file itself must get right.",
    "replace": "Puts a statement in the place of one of the base.",
    "drop": "Takes a statement of the base out.",
    "rename": "Gives a grade of the base another name, wherever it is named.",
}
"""What each head word begins."""

PHRASES = {
    **{words: one.value.about for words, one in BY_WORDS.items()},
    **{words.removeprefix("is "): one.value.about for words, one in BY_WORDS.items() if words.startswith("is ")},
    **{words: form.about for words, form in FORMS.items() if words[0].isalpha()},
    **{f"batch {name}": one.about for name, one in AGGREGATES.items()},
    "for": "The kind of occasion: sorting or show. It decides which cautions pages carry.",
    "except": "A condition that holds the fault or lift back.",
    "no better than": "The best grade that is still possible.",
    "lowers by": "By how many grades it is lowered, after lifts and before caps; several add up.",
    "no worse than": "The lowest grade that is still possible.",
    "unless": "A condition under which silence says nothing.",
    "not known": "The sorter looked and could not tell.",
    "of them": "How many places it is, and not which.",
    "otherwise": "What holds when nothing before it does.",
    "anything else": "Every word that has no row of its own; comes last.",
    "trait by trait": "Medians of numbers and scales, the most named choice, yes or no and places by more than half.",
    "by mean of score": "Each judge's record is graded by itself; the panel's points are their mean.",
    "by median of score": "Each judge's record is graded by itself; the panel's points are their median.",
    "by votes": "Each judge's record is graded by itself; the grade that most judges come to is the panel's.",
    "without the highest and the lowest": "The highest and the lowest score of the judges are left out.",
    "judges": "How many must have judged: a judge who is missing could still say anything.",
    "places named by at least": "So many judges must name a place; without it, more than half.",
    "of two in the middle": "What a median of an even number of judges takes; without it halfway, or open.",
    "gives": "The points of this row.",
    "weight": "How much the criterion counts within its section.",
    "worth": "The most points that the section gives.",
    "say": "The words that the reason shows; {name} is filled in.",
    "comes out": "The grade that this sample must get.",
    "stays open": "Two grades or more must still be possible.",
    "scores from": "The whole range of the score must lie within.",
    "shows fault": "The fault must surely bite.",
    "shows no fault": "No fault may still bite.",
    "shows lift": "The lift must surely raise.",
    "shows bonus": "The bonus must surely be given.",
    "shows penalty": "The penalty must surely be taken.",
    "kept in round": "This round must keep the sample.",
    "leaves in round": "The sample must leave the selection in this round.",
    "more is better": "All else equal, the one with more of it is better.",
    "less is better": "All else equal, the one with less of it is better.",
}
"""What further words do, where they do not say it themselves."""


def about(word: str, *, begins: bool = False) -> str:
    """What a word or phrase of the language is for, "" where it says it itself. begins: as a head word."""
    return HEADS.get(word, "") if begins else PHRASES.get(word, "")
