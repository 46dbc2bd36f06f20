namespace WitherAdvisor.Process.Tests;

/// <summary>A folder that is gone when the test is.</summary>
public sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("witheradvisor-");

    public string Path => folder.FullName;

    public void Dispose() => folder.Delete(recursive: true);
}
