/**
 * Stage 4, set up: family + side's target + equipment + body → solved, judged set-ups. Exact over the discrete
 * choices; ties broken the same way always; the runner-up and why it lost are kept.
 */
package contrapposto.setup;
