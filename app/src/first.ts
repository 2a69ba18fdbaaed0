// What has to run before the first schema is made, and the style sheet that names the layers in their order. Every part
// that is loaded by itself begins with this too: code that several parts share is loaded before any of them.
import './withoutEval.ts';
import './look/tokens.css';
