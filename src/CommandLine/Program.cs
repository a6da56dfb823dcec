using Gradus.CommandLine;

return await Commands.All().RunAsync(args);
