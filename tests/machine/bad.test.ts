import { everyBadFile } from "../support/badFiles.js";
import { problemsOf } from "../support/problems.js";

everyBadFile("tests/machine/bad", problemsOf);
