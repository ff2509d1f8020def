using Runnel.Host.Commands;
using Runnel.Host.Commands.Print;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};

// The page: Runnel.Host.Web.PageHost.RunAsync, once it is there.
return await CommandLine.RunAsync(args, Terminal.Console(), page: null, stop.Token);
