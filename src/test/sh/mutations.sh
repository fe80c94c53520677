#!/bin/sh
# Mutation tests of every measured package, one after the other: mutants made, noticed, of these without end, and seconds.
# The lists, with the line of each mutant, are under target/mutations.
# usage: src/test/sh/mutations.sh [package...]    from the top of the project, with nothing else running
set -eu
[ $# -gt 0 ] || set -- quantity capacity sizing piping pressure tank fuel hotwater plan rules
mvn -B -ntp -q test-compile
begun=$(date +%s)
for package; do
    profiles=mutation
    [ "$package" = rules ] && profiles=mutation,mutation-rules
    start=$(date +%s)
    mvn -B -ntp -q "-P$profiles" org.pitest:pitest-maven:mutationCoverage "-Dmutated=$package" \
        "-DreportsDirectory=target/mutations/$package" -DtimestampedReports=false >"target/mutations-$package.log" 2>&1 ||
        { tail -20 "target/mutations-$package.log"; exit 1; }
    awk -F, -v package="$package" -v seconds=$(($(date +%s) - start)) '
        { made++; noticed += $6 == "KILLED" || $6 == "TIMED_OUT"; endless += $6 == "TIMED_OUT" }
        END { printf "%-9s %5d made %5d noticed %3d endless %3d %% %5d s\n", package, made, noticed, endless,
              int(100 * noticed / made), seconds }' "target/mutations/$package/mutations.csv"
done
echo "together $(($(date +%s) - begun)) s"
