using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;
using WitherAdvisor.ReferenceChecks.Runners;

List<Section> sections = [.. CaseFiles.All.Select(AllRunners.Run)];
Console.Write(MarkdownReport.Write(sections, args.Contains("--verbose")));
return sections.All(section => section.Rows.All(row => row.Passes)) ? 0 : 1;
