package telltally.simulator.selftest;

import telltally.simulator.vehicle.Fault;

/** A fault of one circuit, and when it is there. */
public record FaultCase(String circuit, Fault fault, Presence presence) {}
