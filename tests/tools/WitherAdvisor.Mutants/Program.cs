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
    case ["run", var report, var tried, .. var folders]:
        IReadOnlyList<Mutant> asked = [.. StrykerReport.Read(report).Where(mutant => folders.Length == 0 || folders.Contains(mutant.Folder))];
        TriedLog log = new(tried);
        Trials.Run(log.NotKilled(asked), log, Console.Error);
        return 0;
    case ["score", var report, var tried, var known]:
        Score score = new(StrykerReport.Read(report), new TriedLog(tried), KnownMutants.Read(known));
        Console.Write(score.Write());
        score.Complaints().ToList().ForEach(Console.Error.WriteLine);
        return score.Complaints().Count == 0 ? 0 : 1;
    default:
        Console.Error.WriteLine("started by tests/mutate");
        return 2;
}
