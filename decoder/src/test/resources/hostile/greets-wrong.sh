#!/bin/sh
read -r greeting
echo '{"schema":"telltally/capabilities/99","id":"hostile"}'
exec sleep 1000
