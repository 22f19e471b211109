"""Answers to "is it right?" and "why?", as data that any renderer can print."""
