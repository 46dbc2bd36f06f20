using System.Xml.Linq;

namespace WitherAdvisor.Api.Tests.Architecture;

/// <summary>What a project says that it rests on.</summary>
internal sealed record ProjectFile(string Name, IReadOnlyList<string> Projects, IReadOnlyList<string> Others)
{
    /// <summary>Those of a folder of the repository, and below it.</summary>
    public static IReadOnlyList<ProjectFile> In(string folder) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Root(), folder), "*.csproj", SearchOption.AllDirectories)
            .Select(path => Parse(Path.GetFileNameWithoutExtension(path), File.ReadAllText(path))),
    ];

    public static ProjectFile Parse(string name, string xml)
    {
        XElement project = XElement.Parse(xml);
        IEnumerable<string> Included(string what) => project.Descendants(what).Select(one => one.Attribute("Include")!.Value);
        return new(
            name,
            [.. Included("ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')))],
            [project.Attribute("Sdk")!.Value, .. Included("PackageReference"), .. Included("FrameworkReference")]);
    }

    /// <summary>All that it rests on, at however many removes.</summary>
    public IReadOnlySet<string> Below(IReadOnlyList<ProjectFile> all)
    {
        HashSet<string> below = [.. Others];
        Queue<string> open = new(Projects);
        while (open.TryDequeue(out string? next))
        {
            if (below.Add(next))
            {
                ProjectFile project = all.Single(one => one.Name == next);
                below.UnionWith(project.Others);
                project.Projects.ToList().ForEach(open.Enqueue);
            }
        }

        return below;
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WitherAdvisor.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run within the repository.");
    }
}
