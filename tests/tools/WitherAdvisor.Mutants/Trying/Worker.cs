using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using WitherAdvisor.Mutants.Making;
using WitherAdvisor.Tests.Air;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>A process that tries mutants, as one may take its process down: a line in, a line out.</summary>
internal static class Worker
{
    private static readonly Assembly Tests = typeof(AirStateTests).Assembly;

    /// <summary>Answers each line "number, longest s, tests" with "fate, by what", tab-separated, until there are no more.</summary>
    /// <param name="fresh">
    /// To try one mutant that is passed only once in a process: it acts before anything is set up. Otherwise all tests are
    /// run first without a mutant, so that what is set up once was set up well.
    /// </param>
    public static int Try(bool fresh)
    {
        TextWriter answers = TakeConsole();
        MutantSwitch mutants = new();
        Trial trial = new(mutants);
        IReadOnlyDictionary<string, TestCase>? warm = fresh ? null : WarmedUp();
        while (Console.In.ReadLine() is { } line && !trial.IsStuck)
        {
            string[] job = line.Split('\t');
            (Fate fate, string? by) = trial.Of(int.Parse(job[0]), TimeSpan.FromSeconds(int.Parse(job[1])), () => warm ?? ByName(), job[2].Split(';'));
            answers.WriteLine($"{fate}\t{by}");
        }

        // A loop that does not end would keep the process.
        Environment.Exit(0);
        return 0;
    }

    /// <summary>Writes what is passed once, then of each test its name, its seconds and the mutants that it passes.</summary>
    public static int Pass()
    {
        TextWriter answers = TakeConsole();
        MutantSwitch mutants = new();
        answers.WriteLine($"\t0\t{string.Join(',', mutants.PassedOnce(Tests))}");
        foreach (TestCase test in WarmedUp().Values)
        {
            long start = Stopwatch.GetTimestamp();
            IReadOnlyList<int> passed = mutants.PassedBy(() => test.Failure());
            string seconds = Stopwatch.GetElapsedTime(start).TotalSeconds.ToString(CultureInfo.InvariantCulture);
            answers.WriteLine($"{test.Name}\t{seconds}\t{string.Join(',', passed)}");
        }

        return 0;
    }

    private static Dictionary<string, TestCase> WarmedUp()
    {
        Dictionary<string, TestCase> cases = ByName();
        foreach (TestCase test in cases.Values)
        {
            if (test.Failure() is { } failure)
            {
                throw new InvalidOperationException($"{test.Name} fails without any mutant: {failure}");
            }
        }

        return cases;
    }

    private static Dictionary<string, TestCase> ByName() => TestCases.Of(Tests).ToDictionary(test => test.Name);

    /// <summary>What tests print is not an answer.</summary>
    private static TextWriter TakeConsole()
    {
        TextWriter console = Console.Out;
        Console.SetOut(TextWriter.Null);
        return console;
    }
}
