#!/bin/sh
# Greets as it should.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile"}'
# Answers the first request as it should.
read -r request
echo '{"id":1,"codes":{"present":["34"]}}'
read -r request
echo
exec sleep 1000
