namespace WitherAdvisor.Mutants.Making;

/// <summary>A change that was made to the library, to be switched on by its number.</summary>
/// <param name="Id">Its number; another one each time that mutants are made.</param>
/// <param name="File">Where, from the library's folder.</param>
/// <param name="Line">Where, counted from 1.</param>
/// <param name="Column">Where in the line, counted from 1.</param>
/// <param name="Was">What stood there.</param>
/// <param name="Becomes">What stands there instead.</param>
public sealed record Mutant(int Id, string File, int Line, int Column, string Was, string Becomes)
{
    /// <summary>The topmost folder of the library that it is in.</summary>
    public string Folder => File.Split('/')[0];

    /// <summary>It, whatever its number: equal when mutants are made again of a file that stayed the same.</summary>
    public Mutant Unnumbered() => this with { Id = 0 };

    /// <summary>For people, and for what is said of it in known-mutants.json.</summary>
    public string Name => $"{File}: {Was} → {Becomes}";
}
