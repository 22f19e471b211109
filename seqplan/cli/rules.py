"""`seqplan rules`: the rule book, or one rule."""

from difflib import get_close_matches

import click

from seqplan.base.ids import RuleSlug
from seqplan.cli.options import command, format_option
from seqplan.render.listing import list_rules, show_rule
from seqplan.render.machine.answer import rule_data
from seqplan.render.machine.document import to_json
from seqplan.rules.book import RULE, RULES
from seqplan.words.say import say


@command()
@click.argument("slug", metavar="[SLUG]", required=False)
@format_option
def rules(slug: str | None, form: str) -> None:
    r"""Print the rule book, or one rule with its reason and sources.

    \b
    Examples:
      seqplan rules
      seqplan rules press-before-crossing
    """
    if slug is None:
        text, data = list_rules(RULES), {"rules": [rule_data(rule) for rule in RULES]}
    elif RuleSlug(slug) in RULE:
        rule = RULE[RuleSlug(slug)]
        text, data = show_rule(rule), rule_data(rule)
    else:
        near = ", ".join(f"`{each}`" for each in get_close_matches(slug, RULE))
        hint = say("not-found-near", names=near) if near else ""
        raise click.UsageError(f"{say('not-found-rule', name=slug)}. {hint}".strip())
    click.echo(to_json(data) if form == "json" else text, nl=False)
