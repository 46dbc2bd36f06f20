using Xunit;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Which project may rest on which: use cases on no adapter, ports on no store, and nothing on the web.</summary>
public sealed class RoomsTests
{
    private const string Loft = "WitherAdvisor.Loft";
    private const string Web = "WitherAdvisor.Api";

    private static readonly IReadOnlyList<SourceProject> Source = SourceProject.All();

    private static readonly string[] OutsideTheLoft =
    [
        "Microsoft.AspNetCore", "Microsoft.NET.Sdk.Web", "Swashbuckle", "Dapper", "Microsoft.Data.Sqlite", "SQLite", "CsvHelper", "Parquet",
        "WitherAdvisor.Fields", "WitherAdvisor.Store", "WitherAdvisor.LogFiles", "WitherAdvisor.Export", Web,
    ];

    private static readonly string[] StoreNames = ["sqlite", "postgres", "npgsql", "pragma "];

    [Fact]
    public void The_use_cases_rest_on_no_adapter() => Assert.Empty(Foreign(Of(Loft).Below(Source)));

    [Fact]
    public void The_use_cases_call_no_adapter() => Assert.Empty(Foreign(Of(Loft).References()));

    [Fact]
    public void Nothing_but_tests_rests_on_the_web() => Assert.Empty(OnTheWeb(Source));

    [Theory]
    [InlineData("""<Project Sdk="Microsoft.NET.Sdk"><ItemGroup><ProjectReference Include="../WitherAdvisor.Fields/WitherAdvisor.Fields.csproj" /></ItemGroup></Project>""", "WitherAdvisor.Fields")]
    [InlineData("""<Project Sdk="Microsoft.NET.Sdk"><ItemGroup><ProjectReference Include="../WitherAdvisor.Store.Sqlite/WitherAdvisor.Store.Sqlite.csproj" /></ItemGroup></Project>""", "Dapper")]
    [InlineData("""<Project Sdk="Microsoft.NET.Sdk"><ItemGroup><FrameworkReference Include="Microsoft.AspNetCore.App" /></ItemGroup></Project>""", "Microsoft.AspNetCore.App")]
    [InlineData("""<Project Sdk="Microsoft.NET.Sdk"><ItemGroup><PackageReference Include="Microsoft.Data.Sqlite" /></ItemGroup></Project>""", "Microsoft.Data.Sqlite")]
    [InlineData("""<Project Sdk="Microsoft.NET.Sdk.Web"></Project>""", "Microsoft.NET.Sdk.Web")]
    public void Use_cases_that_did_would_be_found(string project, string found) =>
        Assert.Contains(found, Foreign(SourceProject.Parse(Loft, project).Below(Source)));

    [Fact]
    public void Calls_of_adapters_would_be_found()
    {
        Assert.Contains("Dapper", Foreign(Of("WitherAdvisor.Store.Sqlite").References()));
        Assert.Contains("CsvHelper", Foreign(Of("WitherAdvisor.LogFiles").References()));
        Assert.Contains("Microsoft.AspNetCore", Foreign(Of(Web).References()).Select(name => string.Join('.', name.Split('.').Take(2))));
    }

    [Fact]
    public void A_program_on_the_web_project_would_be_found()
    {
        const string onTheWeb = $"""<Project Sdk="Microsoft.NET.Sdk"><ItemGroup><ProjectReference Include="..\{Web}\{Web}.csproj" /></ItemGroup></Project>""";

        Assert.Equal(["WitherAdvisor.Export"], OnTheWeb([.. Source.Where(project => project.Name != "WitherAdvisor.Export"), SourceProject.Parse("WitherAdvisor.Export", onTheWeb)]));
    }

    [Fact]
    public void The_contract_of_stores_knows_no_store()
    {
        SourceProject contract = SourceProject.Under("tests/testing").Single(project => project.Name == "WitherAdvisor.Store.Contract");

        Assert.Contains(Loft, contract.References());
        Assert.Empty(Foreign(contract.Below(Source)));
        Assert.Empty(Foreign(contract.References()));
        Assert.Empty(NamesOfAStore("tests/testing/WitherAdvisor.Store.Contract"));
    }

    [Fact]
    public void No_port_names_a_store() => Assert.Empty(NamesOfAStore("src/WitherAdvisor.Loft"));

    [Fact]
    public void A_store_that_is_named_would_be_found()
    {
        const string onSqlite = """<Project Sdk="Microsoft.NET.Sdk"><ItemGroup><ProjectReference Include="../../../src/WitherAdvisor.Store.Sqlite/WitherAdvisor.Store.Sqlite.csproj" /></ItemGroup></Project>""";

        Assert.Contains("WitherAdvisor.Store.Sqlite", Foreign(SourceProject.Parse("WitherAdvisor.Store.Contract", onSqlite).Below(Source)));
        Assert.Contains("src/WitherAdvisor.Store.Sqlite/SqliteDatabase.cs", NamesOfAStore("src/WitherAdvisor.Store.Sqlite"));
    }

    private static SourceProject Of(string name) => Source.Single(project => project.Name == name);

    private static IEnumerable<string> Foreign(IEnumerable<string> names) =>
        names.Where(name => OutsideTheLoft.Any(outside => name.StartsWith(outside, StringComparison.Ordinal)));

    private static IEnumerable<string> NamesOfAStore(string folder) => RepositoryFiles.Under(folder, "*.cs")
        .Where(file => StoreNames.Any(name => RepositoryFiles.Read(file).Contains(name, StringComparison.OrdinalIgnoreCase)));

    private static IEnumerable<string> OnTheWeb(IEnumerable<SourceProject> projects) =>
        projects.Where(project => project.Projects.Contains(Web)).Select(project => project.Name);
}
