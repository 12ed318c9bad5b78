import { readMachine } from "../../src/machine/read.js";
import { everyBadFile } from "../support/badFiles.js";

everyBadFile("tests/machine/bad", (text) => readMachine(text).problems);
