namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>Files that a released version left behind; they never change.</summary>
internal static class KeptFile
{
    /// <summary>Released formats: a new release adds its own, none ever goes.</summary>
    public static readonly IReadOnlyList<string> Versions = ["0.1.0"];

    public static byte[] Bytes(string version, string path) => File.ReadAllBytes(Place(version, path));

    public static string Text(string version, string path) => File.ReadAllText(Place(version, path));

    /// <summary>Names of the files or folders in a folder.</summary>
    public static IReadOnlyList<string> In(string version, string folder) =>
        [.. Directory.GetFileSystemEntries(Place(version, folder)).Select(one => Path.GetFileName(one)!).Order(StringComparer.Ordinal)];

    private static string Place(string version, string path) => Path.Combine(AppContext.BaseDirectory, "fixtures", "kept-advice", version, path);
}
