using Runnel.Host.Commands;
using Runnel.Host.Commands.Print;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};

// To be page: Runnel.Host.Web.PageHost.RunAsync once that file is here.
return await CommandLine.RunAsync(args, Terminal.Console(), page: null, stop.Token);
