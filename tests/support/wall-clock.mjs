// Loaded before the program with --import: its wall clock is ahead of the real one by as many
// milliseconds as the file named by WALL_CLOCK_FILE says. The steady clock stays as it is.
import { readFileSync } from 'node:fs';

const realNow = Date.now;
const file = process.env.WALL_CLOCK_FILE;

Date.now = () => realNow() + Number(readFileSync(file, 'utf8'));
