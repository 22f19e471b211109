"""What handouts say in another language, and how to find English in it."""

import re
from functools import cache
from html import unescape
from pathlib import Path

from tools.make_words import sources

from seqplan.base.language import speaking
from seqplan.words.say import sentence, translated

GARMENT = Path(__file__).parent / "garments" / "seekartentasche.yaml"
"""A file of a German author."""

_PLACE = re.compile(r"\{\w+\}")
_SHORTEST = 20
"""Letters of English that nobody writes in German by chance, or in the name of a piece."""


@cache
def skeletons():
    """What stands between the places of every English sentence that readers read, if long."""
    texts = {text for source in sources() if source.is_key for text in source[1:3] if text}
    forms = {source.text for source in sources() if source.context.endswith("-forms")}
    parts = {part.strip(" .,:;") for text in texts - forms for part in _PLACE.split(text)}
    long = {part for part in parts if len(part) >= _SHORTEST and " " in part}
    return re.compile("|".join(re.escape(part) for part in sorted(long, key=len, reverse=True)))


@cache
def labels():
    """Whole English texts that German does not share."""
    with speaking("de"):
        keys = (source.context for source in sources() if source.is_key and source.many is None)
        return {sentence(key) for key in keys if say_plainly(key) != sentence(key)}


def say_plainly(key):
    return translated(key, sentence(key))


def english_labels_in(page):
    """The parts of a page that are such a text and nothing else."""
    parts = {unescape(part).strip() for part in re.findall(r">([^<>]+)<", page)}
    return parts & labels()


def english_in(text):
    """The English sentences, or parts of them, that a text holds."""
    return sorted(set(skeletons().findall(" ".join(text.split()))))
