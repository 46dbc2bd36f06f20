using WitherAdvisor.Export;

return await ExportCommand.Run(args, Console.Error);
