"""Laws of measures that stand in two units."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from seqplan.base.measure import MM_PER_INCH, Length, both, centimetres, inches
from seqplan.explain.reading.measures import pairs_in

_FROM_MM = Fraction(8)
"""Below, a sixteenth of an inch, to which the trade rounds, is more than a fifth."""

metric = st.builds(
    Length, st.integers(1, 20000).map(lambda n: Fraction(n, 10)), st.just("cm"), st.none()
)
imperial = st.builds(
    lambda eighths: Length(eighths * MM_PER_INCH / 8, "in", None), st.integers(1, 800).map(Fraction)
)


@given(metric | imperial, st.sampled_from(["Fold {} over.", "({})", "{}", "Fold {}, then press."]))
def test_a_pair_of_our_own_rounding_agrees(length, text):
    (pair,) = pairs_in(text.format(both(length)))
    assert pair.agrees


@given(
    st.integers(80, 20000).map(lambda n: Fraction(n, 10)),
    st.fractions(Fraction(121, 100), 4),
    st.booleans(),
    st.sampled_from(["{} ({})", "{} / {}", "{}/{}", "{} = {}", "{} [{}]", "{} (about {})"]),
)
def test_a_pair_that_is_off_by_more_than_a_fifth_never_agrees(mm, factor, is_more, text):
    one, other = (mm * factor, mm) if is_more else (mm, mm * factor)
    written = f"{float(one / MM_PER_INCH):.4f} in", f"{float(other / 10):.4f} cm"
    for order in (written, written[::-1]):
        (pair,) = pairs_in(text.format(*order))
        assert abs(pair.imperial.mm - pair.metric.mm) * 6 > max(pair.imperial.mm, pair.metric.mm)
        assert not pair.agrees


@given(imperial)
def test_who_does_as_the_hint_says_agrees(length):
    wrong = Length(length.mm * 2, "cm")
    for text in (
        f"{inches(length)} ({centimetres(length)})",
        f"{centimetres(wrong)} ({inches(wrong)})",
    ):
        assert all(pair.agrees for pair in pairs_in(text))


@given(st.text(alphabet='0123456789 /.,-x½″"()[]=incmyd', max_size=40))
def test_whatever_is_written_is_read_without_a_fault(text):
    for pair in pairs_in(text):
        assert pair.imperial_text in text
        assert pair.metric_text in text
        assert pair.agrees in {True, False}
