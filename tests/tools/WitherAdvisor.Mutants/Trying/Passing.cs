using System.Globalization;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>Which tests pass which mutants.</summary>
internal sealed class Passing
{
    private readonly ILookup<int, (string Test, double Seconds)> tests;
    private readonly IReadOnlyList<(string Test, double Seconds)> all;
    private readonly HashSet<int> once;

    private Passing(IReadOnlyList<(string Test, double Seconds, int[] Mutants)> measured)
    {
        once = [.. measured[0].Mutants];
        var bySpeed = measured.Skip(1).OrderBy(test => test.Seconds).ToList();
        all = [.. bySpeed.Select(test => (test.Test, test.Seconds))];
        tests = (from test in bySpeed
                 from mutant in test.Mutants
                 select (mutant, test.Test, test.Seconds)).ToLookup(passed => passed.mutant, passed => (passed.Test, passed.Seconds));
    }

    public static Passing Measure() => new([.. WorkerProcess.Lines("pass").Select(Read)]);

    /// <summary>The tests that pass it with the time they take, the quickest first; all of them where it is passed only before they begin.</summary>
    public IReadOnlyList<(string Test, double Seconds)> TestsOf(int mutant) => tests.Contains(mutant) ? [.. tests[mutant]] : IsOnce(mutant) ? all : [];

    /// <summary>Whether it is passed while something is set up that is set up once.</summary>
    public bool IsOnce(int mutant) => once.Contains(mutant);

    private static (string Test, double Seconds, int[] Mutants) Read(string line)
    {
        string[] parts = line.Split('\t');
        int[] mutants = [.. parts[2].Split(',', StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)];
        return (parts[0], double.Parse(parts[1], CultureInfo.InvariantCulture), mutants);
    }
}
