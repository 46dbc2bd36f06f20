using WitherAdvisor.ReferenceChecks;
using WitherAdvisor.ReferenceChecks.Report;

IReadOnlyList<Section> sections = AllChecks.Run();
Console.Write(MarkdownReport.Write(sections, verbose: args.Contains("--verbose")));
return sections.All(section => section.Rows.All(row => row.Passes)) ? 0 : 1;
