#!/bin/sh
exec sleep 1000
