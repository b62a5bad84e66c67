#!/bin/sh
# Greets as it should.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile"}'
# Answers seventy requests as it should; then it is worn out.
n=0
while [ $n -lt 70 ] && read -r request; do
    n=$((n + 1))
    echo "{\"id\":$n,\"codes\":{\"present\":[\"34\"]}}"
done
echo 'out of memory' >&2
exit 9
