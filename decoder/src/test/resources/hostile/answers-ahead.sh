#!/bin/sh
# Greets as it should.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile"}'
# Answers before it is asked, and does not read what it is asked.
echo '{"id":1,"codes":{"present":["34"]}}'
echo '{"id":2,"codes":{"present":["34"]}}'
echo '{"id":3,"codes":{"present":["34"]}}'
exec sleep 1000
