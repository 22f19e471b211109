"""Every command explains itself, with an example that can be copied."""

import click
import pytest
from cli.running import run

from seqplan.cli.app import seqplan

COMMANDS = seqplan.list_commands(click.Context(seqplan))


@pytest.mark.parametrize("command", COMMANDS)
def test_the_help_of_a_command_has_its_example_on_a_line_of_its_own(command):
    lines = run(command, "--help").output.splitlines()
    assert any(line.startswith(f"    seqplan {command}") for line in lines)


@pytest.mark.parametrize("words", [[], *([command] for command in COMMANDS)])
def test_the_help_ends_with_one_line_for_each_exit_code(words):
    lines = run(*words, "--help").output.splitlines()
    codes = lines[lines.index("  Exit codes:") + 1 :]
    assert [line.split()[0] for line in codes] == ["0", "1", "2", "3"]


@pytest.mark.parametrize("words", [[], *([command] for command in COMMANDS)])
def test_the_help_shows_no_mark_of_its_layout(words):
    assert "\\b" not in run(*words, "--help").output
