using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>Works out with the library what a reference case holds.</summary>
public interface IRunner
{
    /// <summary>As descriptions of case files name it.</summary>
    string Name { get; }

    double Ours(ReferenceCase given);
}
