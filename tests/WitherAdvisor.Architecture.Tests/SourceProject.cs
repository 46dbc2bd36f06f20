using System.Reflection;
using System.Xml.Linq;
using Mono.Cecil;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>A project under src: what its file says and what it was compiled to.</summary>
internal sealed class SourceProject
{
    private SourceProject(string file)
    {
        Name = Path.GetFileNameWithoutExtension(file);
        XElement project = XElement.Load(file);
        Packages = Included(project, "PackageReference");
        Projects = [.. Included(project, "ProjectReference").Select(reference => Path.GetFileNameWithoutExtension(reference.Replace('\\', '/')))];
        Frameworks = Included(project, "FrameworkReference");
        Sdk = (string?)project.Attribute("Sdk") ?? string.Empty;
        Assembly = Path.Combine(Path.GetDirectoryName(file)!, "bin", Configuration, "net10.0", $"{Name}.dll");
    }

    public static string Root { get; } = FindRoot();

    public string Name { get; }

    public IReadOnlyList<string> Packages { get; }

    public IReadOnlyList<string> Projects { get; }

    public IReadOnlyList<string> Frameworks { get; }

    public string Sdk { get; }

    /// <summary>Where it was compiled to.</summary>
    public string Assembly { get; }

    private static string Configuration { get; } = typeof(SourceProject).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>().Single(given => given.Key == "Configuration").Value!;

    public static IReadOnlyList<SourceProject> All() =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Root, "src"), "*.csproj", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal).Select(file => new SourceProject(file)),
    ];

    public static SourceProject Named(string name) => All().Single(project => project.Name == name);

    /// <summary>Names of the assemblies that the compiled project refers to.</summary>
    public IReadOnlyList<string> References()
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(Assembly);
        return [.. module.AssemblyReferences.Select(reference => reference.Name)];
    }

    private static IReadOnlyList<string> Included(XElement project, string kind) =>
        [.. project.Descendants(kind).Select(reference => (string?)reference.Attribute("Include")).OfType<string>()];

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "WitherAdvisor.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new DirectoryNotFoundException("No WitherAdvisor.sln above the tests.");
    }
}
