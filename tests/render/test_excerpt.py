from textwrap import dedent

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import Span
from seqplan.base.visible import screen_width, visible
from seqplan.render.excerpt import LINE_WIDTH, print_diagnostics


def _finding(span: Span | None, message: str = "a finding") -> Diagnostic:
    return Diagnostic(slug=RuleSlug("a-slug"), severity=Severity.ERROR, message=message, span=span)


def _rows(text: str, span: Span) -> list[str]:
    return print_diagnostics([_finding(span)], "pier.yaml", text).splitlines()


def test_a_finding_shows_its_line_its_reason_and_its_repair() -> None:
    text = "garment: Pier apron\n" + "\n" * 23 + "  hem:         {hem: [back.hem]}\n"
    finding = Diagnostic(
        slug=RuleSlug("crossing-seams-before-hem"),
        severity=Severity.ERROR,
        message="`hem` comes before `centre-back`",
        span=Span(25, 3, 25, 6),
        notes=(Note("The hem runs right round."), Note("It is sewn here.", None, Span(9, 1, 9, 2))),
        fix="Move `hem` below `centre-back`.",
    )
    assert print_diagnostics([finding], "pier.yaml", text) == dedent("""\
        pier.yaml:25:3: error: `hem` comes before `centre-back` (crossing-seams-before-hem)
           25 |   hem:         {hem: [back.hem]}
              |   ^^^
           The hem runs right round.
           Line 9: It is sewn here.
           Move `hem` below `centre-back`.
        """)


def test_findings_are_parted_by_an_empty_line_and_none_print_nothing() -> None:
    both = print_diagnostics([_finding(None), _finding(None)], "pier.yaml", "")
    assert both == (
        "pier.yaml: error: a finding (a-slug)\n\npier.yaml: error: a finding (a-slug)\n"
    )
    assert print_diagnostics([], "pier.yaml", "x") == ""


def test_a_place_outside_the_text_prints_no_line() -> None:
    assert len(_rows("x\n", Span(9, 1, 9, 2))) == 1
    assert len(_rows("x\n\n", Span(2, 1, 2, 1))) == 1


def test_carets_stand_under_wide_and_combining_characters() -> None:
    _, line, carets = _rows("縫う: e\u0301 x", Span(1, 8, 1, 9))
    assert line == "    1 | 縫う: e\u0301 x"
    assert carets == "      | " + " " * 8 + "^"
    assert _rows("縫う", Span(1, 1, 1, 3))[2] == "      | ^^^^"


def test_a_place_without_width_gets_one_caret() -> None:
    assert _rows("about:", Span(1, 7, 1, 7))[2] == "      |       ^"


def test_a_place_of_several_lines_is_marked_to_the_end_of_the_first() -> None:
    assert _rows("a: [b,\n  c]", Span(1, 4, 2, 5))[2] == "      |    ^^^"


def test_hidden_characters_are_shown_by_their_number() -> None:
    rows = _rows("a\x07\u202eb", Span(1, 4, 1, 5))
    assert rows[1:] == ["    1 | a<U+0007><U+202E>b", "      |  " + " " * 16 + "^"]
    assert visible("\ud800") == "<U+D800>"


def test_a_tab_takes_the_room_of_a_space() -> None:
    assert _rows("\ta: b", Span(1, 1, 1, 2))[1:] == ["    1 |  a: b", "      | ^"]


def test_hidden_characters_in_messages_and_names_are_shown_too() -> None:
    printed = print_diagnostics([_finding(None, "a\u202e`\nb`")], "pi\x1ber", "")
    assert printed == "pi<U+001B>er: error: a<U+202E>` b` (a-slug)\n"


def test_a_long_line_is_cut_round_the_place() -> None:
    text = "x" * 5000 + "here" + "y" * 5000
    _, line, carets = _rows(text, Span(1, 5001, 1, 5005))
    shown = line.removeprefix("    1 | ")
    start = carets.removeprefix("      | ").index("^")
    assert shown[start : start + 4] == "here"
    assert carets.count("^") == 4
    assert shown.startswith("…x")
    assert shown.endswith("y…")
    assert screen_width(shown) <= LINE_WIDTH + 1


def test_a_long_place_is_cut_and_wide_letters_count_double() -> None:
    _, line, carets = _rows("縫" * 500, Span(1, 1, 1, 501))
    shown = line.removeprefix("    1 | ")
    assert screen_width(shown) == LINE_WIDTH + 1
    assert carets.count("^") == LINE_WIDTH
    assert shown.endswith("…")


def test_line_ends_of_every_kind_are_counted_once() -> None:
    assert _rows("a\r\nb\rc\nd", Span(4, 1, 4, 2))[1] == "    4 | d"
