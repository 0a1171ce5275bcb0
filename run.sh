#!/bin/bash
home=${2:-/work/lab}; n=${1:-15}
out=$(mktemp -d)
$home/cyclepacket packet $home/plans/patients/SM-04417.yaml --out $out >/dev/null 2>&1
for i in $(seq $n); do s=$(date +%s%N); $home/cyclepacket packet $home/plans/patients/SM-04417.yaml --out $out >/dev/null 2>&1; echo $((($(date +%s%N)-s)/1000000)); done | sort -n | awk '{t[NR]=$1} END{printf "best %d median %d worst %d\n",t[1],t[int((NR+1)/2)],t[NR]}'
