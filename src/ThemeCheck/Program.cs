using Gradus.ThemeCheck;

return await CheckCommand.RunAsync(args);
