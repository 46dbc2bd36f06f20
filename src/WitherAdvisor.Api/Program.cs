using WitherAdvisor.Api;
using WitherAdvisor.Api.Outcomes.Export;

return args is [ExportCommand.Word, .. string[] options]
    ? await ExportCommand.Run(options, Console.Error)
    : await Service.Run(args);

/// <summary>The service's entry point, named so that tests can start it.</summary>
public partial class Program;
