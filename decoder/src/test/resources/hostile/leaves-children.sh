#!/bin/sh
# Greets as it should.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile"}'
read -r request
# A child, and one that has put itself out of reach; their numbers are the codes.
sleep 1000 >/dev/null 2>&1 &
child=$!
escaped=$(setsid sh -c 'sleep 1000 >/dev/null 2>&1 & echo $!')
echo "{\"id\":1,\"codes\":{\"codes\":[\"$child\",\"$escaped\"]}}"
read -r request
exit 0
