#!/bin/sh
# Greets as it should, and reads one format.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile","formats":["pair-even"]}'
read -r request
echo 'out of flashes' >&2
exit 3
