#!/bin/sh
echo 'cannot open display' >&2
exit 1
