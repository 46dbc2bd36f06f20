using System.Reflection;
using System.Runtime.CompilerServices;
using WitherAdvisor.Air;

namespace WitherAdvisor.Mutants.Making;

/// <summary>Which of the mutants in the library acts, and which were passed; see <see cref="FastSwitch"/>.</summary>
internal sealed class MutantSwitch
{
    private const int None = -1;
    private const int MostMutants = 100_000;

    private static readonly Assembly Library = typeof(AirState).Assembly;

    private readonly FieldInfo active;
    private readonly bool[] passed = new bool[MostMutants];

    public MutantSwitch()
    {
        Type type = Library.GetType(FastSwitch.TypeName)
            ?? throw new InvalidOperationException("This library holds no mutants: start tests/mutate.");
        active = type.GetField(FastSwitch.Active)!;
        type.GetField(FastSwitch.Passed)!.SetValue(null, passed);
        Off();
    }

    public void Turn(int mutant) => active.SetValue(null, mutant);

    public void Off() => Turn(None);

    /// <summary>The mutants whose place is passed while something runs.</summary>
    public IReadOnlyList<int> PassedBy(Action run)
    {
        Array.Clear(passed);
        run();
        return [.. Enumerable.Range(0, MostMutants).Where(mutant => passed[mutant])];
    }

    /// <summary>The mutants that are passed while the library and its tests set up what they set up once.</summary>
    /// <remarks>To be asked before anything else, as it is done once in a process.</remarks>
    public IReadOnlyList<int> PassedOnce(Assembly tests) => PassedBy(() =>
    {
        foreach (Type type in Library.GetTypes().Concat(tests.GetTypes()).Where(type => !type.ContainsGenericParameters))
        {
            RuntimeHelpers.RunClassConstructor(type.TypeHandle);
        }
    });
}
