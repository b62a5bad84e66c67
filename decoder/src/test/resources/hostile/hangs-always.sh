#!/bin/sh
# Greets as it should.
read -r greeting
echo '{"schema":"telltally/capabilities/1","id":"hostile"}'
exec sleep 1000
