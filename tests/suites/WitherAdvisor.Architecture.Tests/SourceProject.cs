using System.Reflection;
using System.Xml.Linq;
using Mono.Cecil;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>A project: what its file says and what it was compiled to.</summary>
internal sealed class SourceProject
{
    private SourceProject(string name, XElement project, string assembly)
    {
        Name = name;
        Packages = Included(project, "PackageReference");
        Projects = [.. Included(project, "ProjectReference").Select(reference => Path.GetFileNameWithoutExtension(reference.Replace('\\', '/')))];
        Frameworks = Included(project, "FrameworkReference");
        Sdk = (string?)project.Attribute("Sdk") ?? string.Empty;
        Assembly = assembly;
    }

    public string Name { get; }

    public IReadOnlyList<string> Packages { get; }

    public IReadOnlyList<string> Projects { get; }

    public IReadOnlyList<string> Frameworks { get; }

    public string Sdk { get; }

    /// <summary>Where it was compiled to.</summary>
    public string Assembly { get; }

    private static string Configuration { get; } = typeof(SourceProject).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>().Single(given => given.Key == "Configuration").Value!;

    /// <summary>Those under src.</summary>
    public static IReadOnlyList<SourceProject> All() => Under("src");

    public static IReadOnlyList<SourceProject> Under(string folder) =>
        [.. RepositoryFiles.Under(folder, "*.csproj").Order(StringComparer.Ordinal).Select(Read)];

    public static SourceProject Named(string name) => All().Single(project => project.Name == name);

    /// <summary>One that might be there, for canaries.</summary>
    public static SourceProject Parse(string name, string xml) => new(name, XElement.Parse(xml), string.Empty);

    /// <summary>Names of the assemblies that the compiled project refers to.</summary>
    public IReadOnlyList<string> References()
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(Assembly);
        return [.. module.AssemblyReferences.Select(reference => reference.Name)];
    }

    /// <summary>All that it rests on by the project files, at however many removes.</summary>
    public IReadOnlySet<string> Below(IReadOnlyList<SourceProject> all)
    {
        HashSet<string> below = [Sdk, .. Packages, .. Frameworks];
        foreach (string next in Projects.Where(below.Add).ToList())
        {
            below.UnionWith(all.Single(project => project.Name == next).Below(all));
        }

        return below;
    }

    private static SourceProject Read(string file)
    {
        string name = Path.GetFileNameWithoutExtension(file);
        string folder = Path.GetDirectoryName(RepositoryFiles.InRoot(file))!;
        return new(name, XElement.Parse(RepositoryFiles.Read(file)), Path.Combine(folder, "bin", Configuration, "net10.0", $"{name}.dll"));
    }

    private static IReadOnlyList<string> Included(XElement project, string kind) =>
        [.. project.Descendants(kind).Select(reference => (string?)reference.Attribute("Include")).OfType<string>()];
}
