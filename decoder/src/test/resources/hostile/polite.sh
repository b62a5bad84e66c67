#!/bin/sh
# Greets as it should.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile"}'
n=0
while read -r request; do
    n=$((n + 1))
    echo "{\"id\":$n,\"codes\":{\"present\":[\"34\"]}}"
done
