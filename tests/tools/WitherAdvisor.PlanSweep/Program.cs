using WitherAdvisor.PlanSweep;

// Prints the table of PLANS.md; every plan stands in it, and what a maker would not sign is named.
return SweepTable.Print(Console.Out, Situations.All) ? 0 : 1;
