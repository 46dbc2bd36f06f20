using WitherAdvisor.Api;
using WitherAdvisor.Api.Demo;

var builder = WebApplication.CreateBuilder(args);
builder.AddWitherAdvisor();
var app = builder.Build();
app.UseWitherAdvisor();
await app.ShowInventedEstateOnNewDatabase();
await app.RunAsync();

/// <summary>The service's entry point, named so that tests can start it.</summary>
public partial class Program;
