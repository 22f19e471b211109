"""Handouts for people who sew from paper: self-contained pages that print well."""
