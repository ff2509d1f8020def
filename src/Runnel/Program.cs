using Runnel.Host.Commands;
using Runnel.Host.Commands.Print;
using Runnel.Host.Web;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};

return await CommandLine.RunAsync(args, Terminal.Console(), PageHost.RunAsync, stop.Token);
