"""The one sign that was forgotten, where a text cannot be taken apart.

1. A complaint of the parser names a line. The sign is missing there, in the line before, or where
   that began which was never closed.
2. For each of these lines, the usual slips are put right one by one: a colon, a space, a bracket, a
   quote, the depth of a line. What looks most like a slip comes first.
3. The first repair after which the text can be taken apart, or at least further than to the line
   after, is taken. So what is said has been tried: whoever follows it gets past this place.

Cost: one parse for each repair that is tried; the caller says when that becomes too much.
"""

import re
from collections.abc import Callable, Iterator
from itertools import islice

from seqplan.load.keys import KEYS, Section, keys_of
from seqplan.load.slip import Complaint, Repair
from seqplan.load.strays import key_and_value

_MOST_TRIED = 80
_MOST_SHOWN = 44
_BESIDE = 12
_SMART = str.maketrans("“”„‟‘’", '""""\'\'')  # noqa: RUF001
_NAME = r"[^\W_][\w-]*"
_KEY_NAMES = {key.name: key for key in KEYS}
_SECTIONS = frozenset(keys_of(Section.GARMENT))


Try = Callable[[list[str]], Complaint | None]


def find_repair(lines: list[str], complaint: Complaint, attempt: Try) -> Repair | None:
    """Find the slip behind a complaint.

    Parameters
    ----------
    attempt
        Takes lines apart, and says what there is to complain of then.
    """
    best: tuple[int, Repair] | None = None
    for repair in islice(_repairs(lines, complaint), _MOST_TRIED):
        if repair.line == lines[repair.number - 1]:
            continue
        left = attempt([*lines[: repair.number - 1], repair.line, *lines[repair.number :]])
        if left is None:
            return repair
        if left.line > complaint.line + 1 and (best is None or left.line > best[0]):
            best = left.line, repair
    return best[1] if best is not None else None


def _repairs(lines: list[str], complaint: Complaint) -> Iterator[Repair]:
    numbers = list(dict.fromkeys(_suspects(lines, complaint)))
    for slips in (_quotes, _colons, _closings, _commas, _openings):
        for number in numbers:
            yield from slips(number, lines[number - 1])
    for number in numbers:
        yield from _depths(number, lines)
    for number in numbers:
        yield from _texts(number, lines[number - 1])


def _suspects(lines: list[str], complaint: Complaint) -> Iterator[int]:
    """The line that was opened, the line with text before the complaint, and its own line."""
    last = min(complaint.line, len(lines))
    if complaint.opened is not None and complaint.opened[0] < last:
        yield complaint.opened[0]
    before = (number for number in range(last - 1, 0, -1) if _has_text(lines[number - 1]))
    yield from reversed(list(islice(before, 1)))
    if _has_text(lines[last - 1]):
        yield last


def _has_text(line: str) -> bool:
    return bool(line.strip()) and not line.lstrip().startswith("#")


def _changed(words: str, number: int, line: str, start: int, end: int, new: str) -> Repair:
    """A repair that puts ``new`` in place of a stretch of the line."""
    whole = line[:start] + new + line[end:]
    text = _around(whole, start, start + len(new))
    return Repair(words, number, start + 1, whole, text, len(whole) - len(line))


def _around(line: str, start: int, end: int) -> str:
    """What stands round a repair, from one word to another."""
    bare = line.strip()
    if len(bare) <= _MOST_SHOWN:
        return bare
    first = line.rfind(" ", 0, max(0, start - _BESIDE)) + 1
    after = line.find(" ", end + _BESIDE)
    last = len(line) if after < 0 else after
    shown = line[first:last].strip()
    before, behind = line[:first].strip(), line[last:].strip()
    return f"{'… ' if before else ''}{shown}{' …' if behind else ''}"


# --- colons ------------------------------------------------------------------------------------


def _colons(number: int, line: str) -> Iterator[Repair]:
    """A colon that is missing, has no space after it, or is one too many; `=` in its place."""
    for match in re.finditer(rf"(?:^\s*(?:- )?|[{{,\[]\s*)({_NAME}(?: {_NAME})*):(?=[^\s:])", line):
        if match[1] in _KEY_NAMES or line[match.end()] in "{[\"'":
            repair = _changed("no-space-after-colon", number, line, match.end(), match.end(), " ")
            yield repair._replace(column=match.end())
    equals = re.match(rf"^(\s*(?:- )?)({_NAME}(?: {_NAME})*?)\s*=\s*(?=\S)", line)
    if equals is not None:
        repair = _changed("equals-for-colon", number, line, equals.end(2), equals.end(), ": ")
        yield repair._replace(column=line.index("=", equals.end(2)) + 1)
    if re.match(rf"^\s*{_NAME}\s*$", line):
        end = len(line.rstrip())
        yield _changed("missing-colon-here", number, line, end, end, ":")
    yield from _missing_colon(number, line)
    for match in re.finditer(r":(?=\s*(?:$|[,}\]]))", line):
        if ":" in line[: match.start()]:
            yield _changed("colon-too-many", number, line, match.start(), match.end(), "")


def _missing_colon(number: int, line: str) -> Iterator[Repair]:
    indent = len(line) - len(line.lstrip())
    parted = key_and_value(line.strip(), _KEY_NAMES)
    if parted is not None and not parted[1]:
        end = indent + len(parted[0])
        yield _changed("missing-colon-here", number, line, end, end, ":")
    match = re.match(rf"^\s*{_NAME}(?=\s*[{{\[])", line)
    if match is not None:
        start = match.end()
        space = "" if line[start : start + 1] == " " else " "
        yield _changed("missing-colon-here", number, line, start, start, f":{space}")


# --- quotes ------------------------------------------------------------------------------------


def _quotes(number: int, line: str) -> Iterator[Repair]:
    """A quote that never ends, smart quotes, an apostrophe between single quotes."""
    if line.translate(_SMART) != line:
        start = next(i for i, letter in enumerate(line) if letter.translate(_SMART) != letter)
        whole = line.translate(_SMART)
        text = _around(whole, start, len(whole))
        yield Repair("smart-quotes", number, start + 1, whole, text, 0)
    match = re.match(r"^(.*?:\s+)'(.*'.*)'\s*$", line)
    if match is not None and '"' not in line:
        start = match.end(1)
        yield _changed("apostrophe", number, line, start, len(line), f'"{match[2]}"')
    for quote in "\"'":
        if line.count(quote) == 1:
            yield from _closing_quotes(number, line, quote)
    match = re.match(r'^(.*?:\s+)"([^"]*)"\s*([^",}\]#\s][^"]*)$', line)
    if match is not None:
        text = f"{match[2]} {match[3].rstrip()}"
        yield _changed("text-after-quote", number, line, match.end(1), len(line), f'"{text}"')


def _closing_quotes(number: int, line: str, quote: str) -> Iterator[Repair]:
    start = line.index(quote)
    for match in re.finditer(r"(?=[,}\]])|\s*$", line[start:]):
        end = start + match.start()
        if end > start + 1:
            yield _changed("open-quote", number, line, end, end, quote)._replace(column=start + 1)
    yield _changed("stray-quote", number, line, start, start + 1, "")


# --- brackets ----------------------------------------------------------------------------------


def _closings(number: int, line: str) -> Iterator[Repair]:
    """A bracket that is missing: before the next key, before the other bracket, or at the end."""
    open_ones = _unclosed(line)
    if not open_ones:
        return
    words = "open-list" if open_ones[-1] == "[" else "open-braces"
    closing = "".join({"[": "]", "{": "}"}[sign] for sign in reversed(open_ones))
    end = len(_without_comment(line).rstrip())
    if open_ones[-1] == "[":
        for match in re.finditer(rf"\s*,\s*{_NAME}(?: {_NAME})*\s*:\s", line):
            start = match.start()
            yield _changed(words, number, line, start, start, "]")
        for match in re.finditer(r"\s*}", line):
            yield _changed(words, number, line, match.start(), match.start(), "]")
    trimmed = len(line[:end].rstrip(", "))
    yield _changed(words, number, line, trimmed, end, closing)


def _unclosed(line: str) -> list[str]:
    """The brackets that a line opens and does not close."""
    open_ones: list[str] = []
    quote = ""
    for letter in _without_comment(line):
        if quote:
            quote = "" if letter == quote else quote
        elif letter in "\"'":
            quote = letter
        elif letter in "[{":
            open_ones.append(letter)
        elif letter in "]}":
            wanted = "[" if letter == "]" else "{"
            if wanted in open_ones:
                # A bracket that was never closed does not swallow those around it.
                place = len(open_ones) - 1 - open_ones[::-1].index(wanted)
                del open_ones[place]
    return open_ones


def _without_comment(line: str) -> str:
    return re.split(r"(?:^|\s)#", line, maxsplit=1)[0]


def _openings(number: int, line: str) -> Iterator[Repair]:
    """A bracket that closes what was never opened; a name with keys behind it and no braces."""
    for sign, other, words in (("[", "]", "unopened-list"), ("{", "}", "unopened-braces")):
        if line.count(other) > line.count(sign):
            end = line.rindex(other) if sign == "{" else line.index(other)
            starts = [match.end() for match in re.finditer(r":\s+", line[:end])]
            for start in reversed(starts) if sign == "[" else starts:
                if line[start:end].strip():
                    yield _changed(words, number, line, start, start, sign)
    match = re.match(rf"^(\s*{_NAME}:\s+)({_NAME}(?: {_NAME})*:\s.*)$", line)
    if match is not None and key_and_value(match[2], _KEY_NAMES) is not None:
        braced = f"{{{match[2].rstrip()}}}"
        yield _changed("no-braces", number, line, match.end(1), len(line), braced)


def _commas(number: int, line: str) -> Iterator[Repair]:
    """A comma that is missing before the next key, or another sign in its place."""
    for match in re.finditer(rf"\s*;\s*(?={_NAME})", line):
        yield _changed("semicolon", number, line, match.start(), match.end(), ", ")
    for match in re.finditer(rf"(?<=[\w\]}}\"'])\s+(?={_NAME}(?: {_NAME})?:\s)", line):
        yield _changed("missing-comma", number, line, match.start(), match.start(), ",")


# --- depth -------------------------------------------------------------------------------------


def _depths(number: int, lines: list[str]) -> Iterator[Repair]:
    """A line that begins in another column than its neighbours, or with a dash that they lack."""
    line = lines[number - 1]
    bare = line.lstrip()
    indent = len(line) - len(bare)
    if bare.startswith("- "):
        yield _changed("stray-dash", number, line, indent, indent + 2, "")
    if indent == 0 and bare.partition(":")[0] in _SECTIONS:
        return
    others = {_indent(other) for other in lines if _has_text(other)}
    for other in sorted(others - {indent}, key=lambda other: (abs(other - indent), other)):
        if abs(other - indent) <= 2:
            whole = " " * other + bare
            shift = other - indent
            yield Repair("out-of-line", number, indent + 1, whole, str(other + 1), shift)


def _indent(line: str) -> int:
    return len(line) - len(line.lstrip(" "))


# --- texts -------------------------------------------------------------------------------------


def _texts(number: int, line: str) -> Iterator[Repair]:
    """A text with a colon in it that stands without quotes."""
    match = re.match(rf"^(\s*(?:- )?{_NAME}(?: {_NAME})*:\s+)([^\"'\[{{].*)$", line)
    if match is not None and '"' not in match[2] and ":" in match[2]:
        quoted = f'"{match[2].rstrip()}"'
        yield _changed("text-with-colon", number, line, match.end(1), len(line), quoted)
