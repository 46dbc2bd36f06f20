using WitherAdvisor.Mutants.Making;
using WitherAdvisor.Mutants.Report;
using WitherAdvisor.Mutants.Trying;

switch (args)
{
    case ["pass"]:
        return Worker.Pass();
    case ["try"]:
        return Worker.Try(fresh: false);
    case ["try-fresh"]:
        return Worker.Try(fresh: true);
    case ["put", var from, var to]:
        FastSwitch.Put(from, to);
        return 0;
    case ["score", var report, var known, var score, .. var folders]:
        return Tell(StrykerReport.Read(report), KnownMutants.Read(known), score, folders);
    default:
        Console.Error.WriteLine("started by tests/mutate");
        return 2;
}

static int Tell(IReadOnlyList<Mutant> mutants, KnownMutants known, string path, string[] folders)
{
    IReadOnlyList<Mutant> asked = [.. mutants.Where(mutant => folders.Length == 0 || folders.Contains(mutant.Folder))];
    Score score = new(Trials.Run(asked, Console.Error), known);
    Console.Write(score.Write());
    if (folders.Length > 0)
    {
        return 0;
    }

    File.WriteAllText(path, score.Write());
    foreach (string complaint in score.Complaints())
    {
        Console.Error.WriteLine(complaint);
    }

    return score.Complaints().Count == 0 ? 0 : 1;
}
