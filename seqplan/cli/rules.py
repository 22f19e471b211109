"""`seqplan rules`: the rule book, or one rule."""

from difflib import get_close_matches

import click

from seqplan.base.ids import RuleSlug
from seqplan.cli.options import command, format_option
from seqplan.explain.selection import FINDINGS, NAMES
from seqplan.render.listing import list_findings, list_rules, show_finding, show_rule
from seqplan.render.machine.answer import finding_data, rule_data
from seqplan.render.machine.document import to_json
from seqplan.rules.book import RULE, RULES
from seqplan.words.say import say


@command()
@click.argument("slug", metavar="[SLUG]", required=False)
@format_option
def rules(slug: str | None, form: str) -> None:
    r"""Print the rule book, or one rule with its reason and sources.

    What else the check finds stands at the end: what is left over or lacking, what cannot be done.

    \b
    Examples:
      seqplan rules
      seqplan rules press-before-crossing
      seqplan rules raw-edge
    """
    name = RuleSlug(slug or "")
    if slug is None:
        text = list_rules(RULES) + "\n" + list_findings(FINDINGS)
        found = [finding_data(each) for each in FINDINGS]
        data = {"rules": [rule_data(rule) for rule in RULES], "findings": found}
    elif name in RULE:
        text, data = show_rule(RULE[name]), rule_data(RULE[name])
    elif name in FINDINGS:
        text, data = show_finding(name), finding_data(name)
    else:
        near = ", ".join(f"`{each}`" for each in get_close_matches(slug, NAMES))
        hint = say("not-found-near", names=near) if near else ""
        raise click.UsageError(f"{say('not-found-rule', name=slug)}. {hint}".strip())
    click.echo(to_json(data) if form == "json" else text, nl=False)
