#!/usr/bin/env bash
# Makes Assets/sheet-editor.js again after a change in this folder. Needs node and npm; nobody else does: the bundle is kept in the repository.
set -eu
cd "$(dirname "$0")"
npm ci --no-audit --no-fund --silent
npm run --silent bundle
