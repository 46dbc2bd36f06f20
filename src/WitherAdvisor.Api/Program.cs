using WitherAdvisor.Api;

var builder = WebApplication.CreateBuilder(args);
builder.AddWitherAdvisor();
var app = builder.Build();
app.UseWitherAdvisor();
app.Run();

/// <summary>The service's entry point, named so that tests can start it.</summary>
public partial class Program;
