using System.Globalization;
using System.Net.Sockets;
using System.Text;
using Progression.Records.Storage;

namespace Progression.Records.Clinic;

/// <summary>Sends the head of the records' chain to the log of the system, where whoever can write the records cannot change it. Nothing of a case goes there.</summary>
/// <param name="clock">The clock that dates the line.</param>
/// <param name="socket">The log's socket.</param>
public sealed class SystemLog(TimeProvider clock, string socket = SystemLog.UsualSocket)
{
    /// <summary>Where Linux has it.</summary>
    public const string UsualSocket = "/dev/log";

    private const int ForSecurity = 10; // Facility and severity of RFC 3164, section 4.1.1.
    private const int Information = 6;

    /// <summary>Sends a head; null, or why it could not, as a sentence. It never waits: a log that is full or gone holds nobody up.</summary>
    public string? Send(StoreHead head)
    {
        ArgumentNullException.ThrowIfNull(head);
        try
        {
            using Socket datagram = new(AddressFamily.Unix, SocketType.Dgram, ProtocolType.Unspecified) { Blocking = false };
            datagram.SendTo(Encoding.ASCII.GetBytes(Line(head)), new UnixDomainSocketEndPoint(socket));
            return null;
        }
        catch (SocketException fault)
        {
            return $"The head of the records could not be sent to the system's log at {socket}: {fault.Message}.";
        }
    }

    private string Line(StoreHead head)
    {
        DateTime now = clock.GetLocalNow().DateTime;
        return string.Create(CultureInfo.InvariantCulture,
            $"<{(ForSecurity * 8) + Information}>{now:MMM} {now.Day,2} {now:HH:mm:ss} progression[{Environment.ProcessId}]: records head {head.Number} {head.Hash}");
    }
}
