"""The author's own words, held against the rest of the file.

A fault that one text has many times is told once.
"""

from collections.abc import Iterator

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.explain.reading.measures import pairs_in
from seqplan.explain.reading.parts import Parts
from seqplan.explain.reading.results import Results
from seqplan.explain.reading.text import Text
from seqplan.explain.reading.wording import inside_out_in, steps_in
from seqplan.model.garment import Garment
from seqplan.words.say import say


def check_texts(
    garment: Garment, texts: tuple[Text, ...], offered: Garment | None = None
) -> tuple[Diagnostic, ...]:
    """Read what the author wrote.

    Parameters
    ----------
    garment
        The garment, its choices made: its entries are the steps that the reader has.
    texts
        What to read.
    offered
        The garment with all that its choices offer: a part of another option is a part.
    """
    parts, results = Parts(offered or garment, texts), Results(garment)
    return tuple(
        item
        for text in texts
        for item in (
            *_measures(text),
            *_steps(text, len(garment.entries)),
            *_inside_out(text),
            *_parts(text, parts),
            *_later(text, results, garment),
        )
    )


def _measures(text: Text) -> Iterator[Diagnostic]:
    for pair in dict.fromkeys(pairs_in(text.words)):
        if not pair.agrees:
            told = {
                "imperial": pair.imperial_text,
                "metric": pair.metric_text,
                "imperial_in_metric": pair.imperial_in_metric,
                "metric_in_imperial": pair.metric_in_imperial,
            }
            yield Diagnostic(
                slug=RuleSlug("measures-disagree"),
                severity=Severity.WARNING,
                message=say("check-measures-disagree", **told),
                path=text.path,
                fix=say("check-measures-disagree-fix", **told),
            )


def _steps(text: Text, count: int) -> Iterator[Diagnostic]:
    for number in dict.fromkeys(steps_in(text.words)):
        if not 1 <= number <= count:
            yield Diagnostic(
                slug=RuleSlug("step-not-there"),
                severity=Severity.WARNING,
                message=say("check-step-not-there", number=number, count=count),
                path=text.path,
                fix=say("check-step-not-there-fix", number=number),
            )


def _inside_out(text: Text) -> Iterator[Diagnostic]:
    for words in dict.fromkeys(inside_out_in(text.words)):
        if text.place is not None:
            yield Diagnostic(
                slug=RuleSlug("inside-out"),
                severity=Severity.WARNING,
                message=say("check-inside-out", words=words),
                path=text.path,
                fix=say("check-inside-out-fix"),
            )


def _parts(text: Text, parts: Parts) -> Iterator[Diagnostic]:
    if text.path[0] != "about":
        for words in dict.fromkeys(parts.missing_in(text.words)):
            yield Diagnostic(
                slug=RuleSlug("part-not-there"),
                severity=Severity.HINT,
                message=say("check-part-not-there", words=words),
                path=text.path,
                fix=say("check-part-not-there-fix"),
            )


def _later(text: Text, results: Results, garment: Garment) -> Iterator[Diagnostic]:
    for told in dict.fromkeys(results.later_than(text)):
        place = Note(say("check-other-place", late=told.entry), garment.entry[told.entry].path)
        yield Diagnostic(
            slug=RuleSlug("told-later"),
            severity=Severity.HINT,
            message=say("check-told-later", words=told.words, entry=told.entry),
            path=text.path,
            notes=(place,),
            fix=say("check-told-later-fix", entry=told.entry),
        )
