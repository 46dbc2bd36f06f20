namespace WitherAdvisor.Testing;

/// <summary>A folder that is gone when the test is.</summary>
public sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("witheradvisor-");

    public string Path => folder.FullName;

    /// <summary>The path of a file in it.</summary>
    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => folder.Delete(recursive: true);
}
