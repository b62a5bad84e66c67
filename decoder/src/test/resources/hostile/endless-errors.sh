#!/bin/sh
# Greets as it should.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile"}'
# Answers as it should, and talks to its standard error all the time.
yes 'no idea what this is' >&2 &
n=0
while read -r request; do
    n=$((n + 1))
    echo "{\"id\":$n,\"codes\":{\"present\":[\"34\"]}}"
done
