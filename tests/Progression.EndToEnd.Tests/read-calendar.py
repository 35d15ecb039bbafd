#!/usr/bin/env python3
"""Reads a calendar with Debian's python3-icalendar, which knows nothing of this project: a line for each entry with the moment at which it begins,
reckoned from the time zone that the file itself carries and from no other."""
import datetime
import sys

import icalendar

with open(sys.argv[1], "rb") as file:
    calendar = icalendar.Calendar.from_ical(file.read())
zones = {str(zone["TZID"]): zone.to_tz() for zone in calendar.walk("VTIMEZONE")}
for event in calendar.walk("VEVENT"):
    start = event["DTSTART"]
    moment = start.dt
    if isinstance(moment, datetime.datetime):
        zone = start.params.get("TZID")
        local = moment.replace(tzinfo=None)
        moment = zones[zone].localize(local).astimezone(datetime.timezone.utc) if zone else moment
        told = f"{local:%Y-%m-%dT%H:%M} {moment:%Y-%m-%dT%H:%MZ}"
    else:
        told = f"{moment:%Y-%m-%d} day"
    print(event["UID"], event["SEQUENCE"], event["STATUS"], told, event["SUMMARY"], sep="|")
