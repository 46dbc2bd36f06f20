var builder = WebApplication.CreateBuilder(args);
var app = builder.Build();
app.Run();

/// <summary>The service's entry point, named so that tests can start it.</summary>
public partial class Program;
