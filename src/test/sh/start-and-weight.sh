#!/bin/sh
# Prints cold start, requests and bytes of the first view, and heap a page, beside an empty program of the same framework.
# Heap of a house's page is told by OpenPagesMeasured.
# usage: src/test/sh/start-and-weight.sh    from the top of the project; some minute, with nothing else running
set -eu
mvn -B -ntp -q test-compile dependency:build-classpath -Dmdep.outputFile=target/classpath -Dmdep.includeScope=test
classes="target/test-classes:target/classes:$(cat target/classpath)"
sh src/test/sh/ensure-chromium.sh target/chromium.path "$classes"
exec java -Dlongrun.chromium=target/chromium.path -cp "$classes" longrun.bench.StartAndWeight
