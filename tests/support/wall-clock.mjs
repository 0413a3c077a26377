// Loaded before the program with --import: its wall clock is ahead of the real one by as many
// milliseconds as the file named by WALL_CLOCK_FILE says, or ahead of the moment in WALL_CLOCK_STANDS,
// where it stands until the file says more. The steady clock goes with it there, else it stays as it is.
import { readFileSync } from 'node:fs';

const realNow = Date.now;
const { WALL_CLOCK_FILE: file, WALL_CLOCK_STANDS: stands } = process.env;
const inFile = () => Number(readFileSync(file, 'utf8'));

Date.now = stands === undefined ? () => realNow() + inFile() : () => Number(stands) + inFile();
if (stands !== undefined) performance.now = inFile;
