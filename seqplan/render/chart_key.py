"""The key of a chart."""

from seqplan.explain.chart import Chart
from seqplan.recipes.construction import Construction
from seqplan.render.chart_reasons import Numbers
from seqplan.render.chart_table import Lettering, table, text_cell


def key_table(chart: Chart, c: Construction, numbers: Numbers) -> str:
    l = Lettering(size=7.5)
    return table([[text_cell([f"{k.number}"], 16, 12, lettering=l), text_cell([k.words], 150, 12, lettering=l)] for k in numbers.kinds])
