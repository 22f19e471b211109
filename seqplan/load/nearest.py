"""Which known name is meant by an unknown one, where that is plausible.

1. Names that are the same but for capitals, accents and the marks between their words.
2. Names a few slips of the keyboard away: a letter too many, missing, another, or two that changed
   places; one slip in up to four letters, two in up to eight, three in longer names.
3. Names of several words that share the whole of the other name: `side` and `side-upper`.

An offer that is far away misleads more than none. Cost: letters times slips for each candidate.
"""

from collections.abc import Iterable
from unicodedata import combining, normalize

_MARKS = str.maketrans("", "", " -_'")
_SHORTEST_WORD = 3


def nearest(name: str, candidates: Iterable[str]) -> list[str]:
    """Give the candidates that ``name`` is probably meant for: the nearest, at most two.

    >>> nearest("sow", ["sew", "hem", "fold"]), nearest("peices", ["pieces", "choices"])
    (['sew'], ['pieces'])
    >>> nearest("steps", ["sizes"]), nearest("outer", ["shoulder"])
    ([], [])
    >>> nearest("side", ["hem", "upper-side"])
    ['upper-side']
    """
    bare = _bare(name)
    found: list[tuple[int, str]] = []
    most = _most_slips(bare)
    worded: list[str] = []
    for candidate in candidates:
        other = _bare(candidate)
        if other == bare:
            found.append((0, candidate))
            continue
        slips = slips_between(bare, other, most)
        if slips is not None and slips < len(bare):
            found.append((slips, candidate))
        elif _shares_words(name, candidate):
            worded.append(candidate)
    if not found:
        return worded if len(worded) <= 2 else []
    least = min(slips for slips, _ in found)
    return [candidate for slips, candidate in found if slips == least][:2]


def folded(name: str) -> str:
    """Give a name without case and accents, to tell names that people would mix up.

    >>> folded("Été") == folded("ete")
    True
    """
    letters = normalize("NFKD", name)
    return normalize("NFKC", "".join(mark for mark in letters if not combining(mark)).casefold())


def slips_between(one: str, other: str, most: int) -> int | None:
    """Count the slips that make ``other`` of ``one``; ``None`` where there are more than ``most``.

    >>> slips_between("sdie", "side", 1), slips_between("waist", "hem", 2)
    (1, None)
    """
    if abs(len(one) - len(other)) > most:
        return None
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        earlier, before, row = before, row, [i]
        for j, wanted in enumerate(other, 1):
            slips = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (letter != wanted))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == wanted:
                slips = min(slips, earlier[j - 2] + 1)
            row.append(slips)
        if min(row) > most:
            return None
    return row[-1] if row[-1] <= most else None


def _bare(name: str) -> str:
    return folded(name).translate(_MARKS)


def _most_slips(name: str) -> int:
    return 1 + (len(name) > 4) + (len(name) > 8)


def _shares_words(name: str, candidate: str) -> bool:
    """Whether all words of the one are among the words of the other."""
    ours, theirs = _words(name), _words(candidate)
    fewer = min(ours, theirs, key=len)
    is_long = max((len(word) for word in fewer), default=0) >= _SHORTEST_WORD
    return is_long and (ours < theirs or theirs < ours)


def _words(name: str) -> set[str]:
    return set(folded(name).replace("-", " ").replace("_", " ").split())
