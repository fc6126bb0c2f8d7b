"""Invented shops, people, places and carriers, from j_words.json. No street, number or address belongs to anybody."""

import json
import os

with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "j_words.json"), encoding="utf8") as _words:
    _all = json.load(_words)
SHOPS, PEOPLE, NOT = _all["shops"], _all["people"], _all["not"]
