using System.Net.Sockets;
using System.Text;
using Progression.Records.Clinic;
using Progression.Records.Storage;
using Progression.Records.Tests.Caseload;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Clinic;

/// <summary>The log of the system as it is on the other side: a socket that takes datagrams.</summary>
public sealed class SystemLogTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void After_each_save_the_head_of_the_chain_arrives_and_nothing_else()
    {
        using Socket log = new(AddressFamily.Unix, SocketType.Dgram, ProtocolType.Unspecified) { ReceiveTimeout = 5000 };
        log.Bind(new UnixDomainSocketEndPoint(_folder.File("log")));
        SystemLog sender = new(new FixedClock(new DateTimeOffset(2026, 11, 5, 9, 3, 7, TimeSpan.Zero)), _folder.File("log"));
        LiteDbPlanStore store = new(new StoreOptions(_folder.File("plans"), Sample.Fields) { Saved = head => Assert.Null(sender.Send(head)) });

        store.Append(Sample.Plan("SECRET-7", null, "{}"));
        store.Append(Sample.Plan("SECRET-8", null, "{}"));
        store.Append(Sample.Plan("SECRET-8", null, "{}")); // The same again saves nothing.

        _ = Received(log);
        Assert.Equal($"<86>Nov  5 09:03:07 progression[{Environment.ProcessId}]: records head 2 {store.Status().HeadHash}", Received(log));
        Assert.Equal(0, log.Available);
    }

    [Fact]
    public void A_log_that_is_not_there_or_takes_no_more_holds_nobody_up()
    {
        StoreHead head = new(1, new string('a', 64));
        Assert.Contains("could not be sent", new SystemLog(TimeProvider.System, _folder.File("none")).Send(head), StringComparison.Ordinal);

        using Socket deaf = new(AddressFamily.Unix, SocketType.Dgram, ProtocolType.Unspecified);
        deaf.Bind(new UnixDomainSocketEndPoint(_folder.File("deaf")));
        SystemLog full = new(TimeProvider.System, _folder.File("deaf"));
        Assert.Contains(Enumerable.Range(0, 100_000).Select(_ => full.Send(head)), told => told is not null);
    }

    private static string Received(Socket log)
    {
        byte[] line = new byte[1024];
        return Encoding.ASCII.GetString(line, 0, log.Receive(line));
    }
}
