/** The help text: every command, option and exit code. */
export const HELP = `notchbook: a guided workbook for building small outdoor pieces of wood

  notchbook                      open the workbook (on a pipe: print the example plan)
  notchbook recipes              list the pieces there are recipes for
  notchbook plan RECIPE          work the whole job out and print it
  notchbook print RECIPE --to FOLDER
                                 the plan on paper (PDF) and as CSV, Markdown and JSON;
                                 a build by its name shows what is done
  notchbook check FILE           check a recipe file; every problem with file:line:column
  notchbook show STAGE RECIPE    the data after a stage: recipe, answers, sizes, model,
                                 cut-list, steps, plan
  notchbook work NAME            one number while standing at the saw; "work" alone lists
                                 the names, "work NAME --help" tells what it wants
  notchbook work mistake         what to do when something went wrong: "--what screw-snapped"
  notchbook hand-over BUILD      the care sheet for the owner and the record of a build
  notchbook builds               list what is under way
  notchbook export BUILD         the whole build as one file, for another machine
  notchbook import FILE          take such a file in; nothing here is written over
  notchbook schema               the JSON Schema of what plan --as json prints
  notchbook sources              every publication that a number is from, and which
                                 numbers nobody has re-checked

RECIPE is a name from "notchbook recipes" or a path to a recipe file; BUILD is a name from
"notchbook builds".

Options
  --set NAME=VALUE   answer a question, as often as needed: --set seat_length=6ft
  --measured NAME=LENGTH  what you measured, in place of the plan's figure (plan):
                     --measured 2x4.width=3-7/16in --measured seat=47-15/16in
  --as FORM          text, json, csv or markdown (plan, sources)
  --table NAME       cut, boards or hardware: which table csv holds (plan; usual: cut)
  --units SYSTEM     inch or metric; how lengths are read and shown (usual: inch)
  --grid LENGTH      finest mark on the tape: 1/16in, 1/32in, 1/64in, 1mm or 0.5mm
  --to PLACE         the folder for print, made where it is missing; the file for export
                     (usual: BUILD.notchbook.json right here)
  --paper SIZE       letter or a4 (print; usual: letter)
  --pages NAMES      print only these: cover,views,shopping,cut,boards,joints,templates,
                     marks,screws,steps,time,tools,words,fit,care
  --width COLUMNS    width of printed text (usual: 80)
  --data FOLDER      where builds are kept (else NOTCHBOOK_HOME, else your data folder)
  --ascii            plain characters instead of line drawing
  --no-color         no color (the NO_COLOR variable does the same)
  --help, --version

Exit codes
  0  done
  1  a recipe file has problems
  2  the command line or an answer is wrong
  3  a file can't be read or written
`;
