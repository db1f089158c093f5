; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/overwritten.md of cairn tells the lemma, with
; a proof by hand for every number of devices. Written by proofs/generate, from the formulas that
; cairn proves with.
(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status unsat)
(declare-const |power of d1 is off| Bool)
(declare-const |power of d1 is starting| Bool)
(declare-const |power of d1 is up| Bool)
(declare-const |power of d1 is held| Bool)
(declare-const |leader of d1 is none| Bool)
(declare-const |leader of d1 is d1| Bool)
(declare-const |leader of d1 is d2| Bool)
(declare-const |leader of d1 is d3| Bool)
(declare-const |number of d1 is 1| Bool)
(declare-const |number of d1 is 2| Bool)
(declare-const |number of d1 is 3| Bool)
(declare-const |next number of d1 is 1| Bool)
(declare-const |next number of d1 is 2| Bool)
(declare-const |next number of d1 is 3| Bool)
(declare-const |priority of d1 is 1| Bool)
(declare-const |priority of d1 is 2| Bool)
(declare-const |priority of d1 is 3| Bool)
(declare-const |startup priority of d1 is 1| Bool)
(declare-const |startup priority of d1 is 2| Bool)
(declare-const |startup priority of d1 is 3| Bool)
(declare-const |power of d2 is off| Bool)
(declare-const |power of d2 is starting| Bool)
(declare-const |power of d2 is up| Bool)
(declare-const |power of d2 is held| Bool)
(declare-const |leader of d2 is none| Bool)
(declare-const |leader of d2 is d1| Bool)
(declare-const |leader of d2 is d2| Bool)
(declare-const |leader of d2 is d3| Bool)
(declare-const |number of d2 is 1| Bool)
(declare-const |number of d2 is 2| Bool)
(declare-const |number of d2 is 3| Bool)
(declare-const |next number of d2 is 1| Bool)
(declare-const |next number of d2 is 2| Bool)
(declare-const |next number of d2 is 3| Bool)
(declare-const |priority of d2 is 1| Bool)
(declare-const |priority of d2 is 2| Bool)
(declare-const |priority of d2 is 3| Bool)
(declare-const |startup priority of d2 is 1| Bool)
(declare-const |startup priority of d2 is 2| Bool)
(declare-const |startup priority of d2 is 3| Bool)
(declare-const |power of d3 is off| Bool)
(declare-const |power of d3 is starting| Bool)
(declare-const |power of d3 is up| Bool)
(declare-const |power of d3 is held| Bool)
(declare-const |leader of d3 is none| Bool)
(declare-const |leader of d3 is d1| Bool)
(declare-const |leader of d3 is d2| Bool)
(declare-const |leader of d3 is d3| Bool)
(declare-const |number of d3 is 1| Bool)
(declare-const |number of d3 is 2| Bool)
(declare-const |number of d3 is 3| Bool)
(declare-const |next number of d3 is 1| Bool)
(declare-const |next number of d3 is 2| Bool)
(declare-const |next number of d3 is 3| Bool)
(declare-const |priority of d3 is 1| Bool)
(declare-const |priority of d3 is 2| Bool)
(declare-const |priority of d3 is 3| Bool)
(declare-const |startup priority of d3 is 1| Bool)
(declare-const |startup priority of d3 is 2| Bool)
(declare-const |startup priority of d3 is 3| Bool)
(declare-const |d1 senior to d2| Bool)
(declare-const |d1 senior to d3| Bool)
(declare-const |d2 senior to d1| Bool)
(declare-const |d2 senior to d3| Bool)
(declare-const |d3 senior to d1| Bool)
(declare-const |d3 senior to d2| Bool)
(declare-const |d1/2 enabled| Bool)
(declare-const |d1/2 enabled in startup| Bool)
(declare-const |side of d1/2 is none| Bool)
(declare-const |side of d1/2 is east| Bool)
(declare-const |side of d1/2 is west| Bool)
(declare-const |startup side of d1/2 is none| Bool)
(declare-const |startup side of d1/2 is east| Bool)
(declare-const |startup side of d1/2 is west| Bool)
(declare-const |operational side of d1/2 is none| Bool)
(declare-const |operational side of d1/2 is east| Bool)
(declare-const |operational side of d1/2 is west| Bool)
(declare-const |d1/3 enabled| Bool)
(declare-const |d1/3 enabled in startup| Bool)
(declare-const |side of d1/3 is none| Bool)
(declare-const |side of d1/3 is east| Bool)
(declare-const |side of d1/3 is west| Bool)
(declare-const |startup side of d1/3 is none| Bool)
(declare-const |startup side of d1/3 is east| Bool)
(declare-const |startup side of d1/3 is west| Bool)
(declare-const |operational side of d1/3 is none| Bool)
(declare-const |operational side of d1/3 is east| Bool)
(declare-const |operational side of d1/3 is west| Bool)
(declare-const |d2/1 enabled| Bool)
(declare-const |d2/1 enabled in startup| Bool)
(declare-const |side of d2/1 is none| Bool)
(declare-const |side of d2/1 is east| Bool)
(declare-const |side of d2/1 is west| Bool)
(declare-const |startup side of d2/1 is none| Bool)
(declare-const |startup side of d2/1 is east| Bool)
(declare-const |startup side of d2/1 is west| Bool)
(declare-const |operational side of d2/1 is none| Bool)
(declare-const |operational side of d2/1 is east| Bool)
(declare-const |operational side of d2/1 is west| Bool)
(declare-const |d2/3 enabled| Bool)
(declare-const |d2/3 enabled in startup| Bool)
(declare-const |side of d2/3 is none| Bool)
(declare-const |side of d2/3 is east| Bool)
(declare-const |side of d2/3 is west| Bool)
(declare-const |startup side of d2/3 is none| Bool)
(declare-const |startup side of d2/3 is east| Bool)
(declare-const |startup side of d2/3 is west| Bool)
(declare-const |operational side of d2/3 is none| Bool)
(declare-const |operational side of d2/3 is east| Bool)
(declare-const |operational side of d2/3 is west| Bool)
(declare-const |d3/1 enabled| Bool)
(declare-const |d3/1 enabled in startup| Bool)
(declare-const |side of d3/1 is none| Bool)
(declare-const |side of d3/1 is east| Bool)
(declare-const |side of d3/1 is west| Bool)
(declare-const |startup side of d3/1 is none| Bool)
(declare-const |startup side of d3/1 is east| Bool)
(declare-const |startup side of d3/1 is west| Bool)
(declare-const |operational side of d3/1 is none| Bool)
(declare-const |operational side of d3/1 is east| Bool)
(declare-const |operational side of d3/1 is west| Bool)
(declare-const |d3/2 enabled| Bool)
(declare-const |d3/2 enabled in startup| Bool)
(declare-const |side of d3/2 is none| Bool)
(declare-const |side of d3/2 is east| Bool)
(declare-const |side of d3/2 is west| Bool)
(declare-const |startup side of d3/2 is none| Bool)
(declare-const |startup side of d3/2 is east| Bool)
(declare-const |startup side of d3/2 is west| Bool)
(declare-const |operational side of d3/2 is none| Bool)
(declare-const |operational side of d3/2 is east| Bool)
(declare-const |operational side of d3/2 is west| Bool)
(declare-const |d1--d2 plugged| Bool)
(declare-const |d1--d2 broken| Bool)
(declare-const |d1--d3 plugged| Bool)
(declare-const |d1--d3 broken| Bool)
(declare-const |d2--d3 plugged| Bool)
(declare-const |d2--d3 broken| Bool)
(declare-const |rival plugged| Bool)
(declare-const |rival broken| Bool)
(declare-const |s1 done| Bool)
(declare-const |s2 done| Bool)
(declare-const |s3 done| Bool)
(declare-const |s4 done| Bool)
(declare-const |s5 done| Bool)
(declare-const |s6 done| Bool)
(declare-const |s7 done| Bool)
(declare-const |s8 done| Bool)
(declare-const |s9 done| Bool)
(declare-const |s10 done| Bool)
(declare-const |s11 done| Bool)
(declare-const |s12 done| Bool)
(declare-const |s13 done| Bool)
(declare-const |s14 done| Bool)
(declare-const |s15 done| Bool)
(declare-const |cable breaks left is 1| Bool)
(declare-const |crashes left is 1| Bool)
(declare-const |omissions left is 1| Bool)
(declare-const |late starts left is 1| Bool)
(declare-const |halted| Bool)
(declare-const |power of d1 is off'| Bool)
(declare-const |power of d1 is starting'| Bool)
(declare-const |power of d1 is up'| Bool)
(declare-const |power of d1 is held'| Bool)
(declare-const |leader of d1 is none'| Bool)
(declare-const |leader of d1 is d1'| Bool)
(declare-const |leader of d1 is d2'| Bool)
(declare-const |leader of d1 is d3'| Bool)
(declare-const |number of d1 is 1'| Bool)
(declare-const |number of d1 is 2'| Bool)
(declare-const |number of d1 is 3'| Bool)
(declare-const |next number of d1 is 1'| Bool)
(declare-const |next number of d1 is 2'| Bool)
(declare-const |next number of d1 is 3'| Bool)
(declare-const |priority of d1 is 1'| Bool)
(declare-const |priority of d1 is 2'| Bool)
(declare-const |priority of d1 is 3'| Bool)
(declare-const |startup priority of d1 is 1'| Bool)
(declare-const |startup priority of d1 is 2'| Bool)
(declare-const |startup priority of d1 is 3'| Bool)
(declare-const |power of d2 is off'| Bool)
(declare-const |power of d2 is starting'| Bool)
(declare-const |power of d2 is up'| Bool)
(declare-const |power of d2 is held'| Bool)
(declare-const |leader of d2 is none'| Bool)
(declare-const |leader of d2 is d1'| Bool)
(declare-const |leader of d2 is d2'| Bool)
(declare-const |leader of d2 is d3'| Bool)
(declare-const |number of d2 is 1'| Bool)
(declare-const |number of d2 is 2'| Bool)
(declare-const |number of d2 is 3'| Bool)
(declare-const |next number of d2 is 1'| Bool)
(declare-const |next number of d2 is 2'| Bool)
(declare-const |next number of d2 is 3'| Bool)
(declare-const |priority of d2 is 1'| Bool)
(declare-const |priority of d2 is 2'| Bool)
(declare-const |priority of d2 is 3'| Bool)
(declare-const |startup priority of d2 is 1'| Bool)
(declare-const |startup priority of d2 is 2'| Bool)
(declare-const |startup priority of d2 is 3'| Bool)
(declare-const |power of d3 is off'| Bool)
(declare-const |power of d3 is starting'| Bool)
(declare-const |power of d3 is up'| Bool)
(declare-const |power of d3 is held'| Bool)
(declare-const |leader of d3 is none'| Bool)
(declare-const |leader of d3 is d1'| Bool)
(declare-const |leader of d3 is d2'| Bool)
(declare-const |leader of d3 is d3'| Bool)
(declare-const |number of d3 is 1'| Bool)
(declare-const |number of d3 is 2'| Bool)
(declare-const |number of d3 is 3'| Bool)
(declare-const |next number of d3 is 1'| Bool)
(declare-const |next number of d3 is 2'| Bool)
(declare-const |next number of d3 is 3'| Bool)
(declare-const |priority of d3 is 1'| Bool)
(declare-const |priority of d3 is 2'| Bool)
(declare-const |priority of d3 is 3'| Bool)
(declare-const |startup priority of d3 is 1'| Bool)
(declare-const |startup priority of d3 is 2'| Bool)
(declare-const |startup priority of d3 is 3'| Bool)
(declare-const |d1/2 enabled'| Bool)
(declare-const |side of d1/2 is none'| Bool)
(declare-const |side of d1/2 is east'| Bool)
(declare-const |side of d1/2 is west'| Bool)
(declare-const |startup side of d1/2 is none'| Bool)
(declare-const |startup side of d1/2 is east'| Bool)
(declare-const |startup side of d1/2 is west'| Bool)
(declare-const |operational side of d1/2 is none'| Bool)
(declare-const |operational side of d1/2 is east'| Bool)
(declare-const |operational side of d1/2 is west'| Bool)
(declare-const |d1/3 enabled'| Bool)
(declare-const |side of d1/3 is none'| Bool)
(declare-const |side of d1/3 is east'| Bool)
(declare-const |side of d1/3 is west'| Bool)
(declare-const |startup side of d1/3 is none'| Bool)
(declare-const |startup side of d1/3 is east'| Bool)
(declare-const |startup side of d1/3 is west'| Bool)
(declare-const |operational side of d1/3 is none'| Bool)
(declare-const |operational side of d1/3 is east'| Bool)
(declare-const |operational side of d1/3 is west'| Bool)
(declare-const |side of d2/1 is none'| Bool)
(declare-const |side of d2/1 is east'| Bool)
(declare-const |side of d2/1 is west'| Bool)
(declare-const |startup side of d2/1 is none'| Bool)
(declare-const |startup side of d2/1 is east'| Bool)
(declare-const |startup side of d2/1 is west'| Bool)
(declare-const |operational side of d2/1 is none'| Bool)
(declare-const |operational side of d2/1 is east'| Bool)
(declare-const |operational side of d2/1 is west'| Bool)
(declare-const |side of d2/3 is none'| Bool)
(declare-const |side of d2/3 is east'| Bool)
(declare-const |side of d2/3 is west'| Bool)
(declare-const |startup side of d2/3 is none'| Bool)
(declare-const |startup side of d2/3 is east'| Bool)
(declare-const |startup side of d2/3 is west'| Bool)
(declare-const |operational side of d2/3 is none'| Bool)
(declare-const |operational side of d2/3 is east'| Bool)
(declare-const |operational side of d2/3 is west'| Bool)
(declare-const |side of d3/1 is none'| Bool)
(declare-const |side of d3/1 is east'| Bool)
(declare-const |side of d3/1 is west'| Bool)
(declare-const |startup side of d3/1 is none'| Bool)
(declare-const |startup side of d3/1 is east'| Bool)
(declare-const |startup side of d3/1 is west'| Bool)
(declare-const |operational side of d3/1 is none'| Bool)
(declare-const |operational side of d3/1 is east'| Bool)
(declare-const |operational side of d3/1 is west'| Bool)
(declare-const |side of d3/2 is none'| Bool)
(declare-const |side of d3/2 is east'| Bool)
(declare-const |side of d3/2 is west'| Bool)
(declare-const |startup side of d3/2 is none'| Bool)
(declare-const |startup side of d3/2 is east'| Bool)
(declare-const |startup side of d3/2 is west'| Bool)
(declare-const |operational side of d3/2 is none'| Bool)
(declare-const |operational side of d3/2 is east'| Bool)
(declare-const |operational side of d3/2 is west'| Bool)
(declare-const n1 Bool)
(assert (= n1 (and (not |power of d1 is off|) (not |power of d1 is starting|))))
(declare-const n2 Bool)
(assert (= n2 (and (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held|) (or (not |power of d1 is off|) (not |power of d1 is starting|)) (or
    (not |power of d1 is up|) n1) (or (not |power of d1 is held|) (and (not |power of d1 is off|)
    (not |power of d1 is starting|) (not |power of d1 is up|))) (or |leader of d1 is none|
    |leader of d1 is d1| |leader of d1 is d2| |leader of d1 is d3|) (or (not |leader of d1 is none|)
    (not |leader of d1 is d1|)) (or (not |leader of d1 is d2|) (and (not |leader of d1 is none|)
    (not |leader of d1 is d1|))) (or (not |leader of d1 is d3|) (and (not |leader of d1 is none|)
    (not |leader of d1 is d1|) (not |leader of d1 is d2|))) (or |number of d1 is 1|
    |number of d1 is 2| |number of d1 is 3|) (or (not |number of d1 is 1|) (not |number of d1 is 2|))
    (or (not |number of d1 is 3|) (and (not |number of d1 is 1|) (not |number of d1 is 2|))) (or
    |next number of d1 is 1| |next number of d1 is 2| |next number of d1 is 3|) (or
    (not |next number of d1 is 1|) (not |next number of d1 is 2|)) (or
    (not |next number of d1 is 3|) (and (not |next number of d1 is 1|)
    (not |next number of d1 is 2|))) (or |priority of d1 is 1| |priority of d1 is 2|
    |priority of d1 is 3|) (or (not |priority of d1 is 1|) (not |priority of d1 is 2|)) (or
    (not |priority of d1 is 3|) (and (not |priority of d1 is 1|) (not |priority of d1 is 2|))) (or
    |startup priority of d1 is 1| |startup priority of d1 is 2| |startup priority of d1 is 3|) (or
    (not |startup priority of d1 is 1|) (not |startup priority of d1 is 2|)) (or
    (not |startup priority of d1 is 3|) (and (not |startup priority of d1 is 1|)
    (not |startup priority of d1 is 2|))) (or |power of d2 is off| |power of d2 is starting|
    |power of d2 is up| |power of d2 is held|) (or (not |power of d2 is off|)
    (not |power of d2 is starting|)) (or (not |power of d2 is up|) (and (not |power of d2 is off|)
    (not |power of d2 is starting|))) (or (not |power of d2 is held|) (and
    (not |power of d2 is off|) (not |power of d2 is starting|) (not |power of d2 is up|))))))
(declare-const n3 Bool)
(assert (= n3 (and n2 (or |leader of d2 is none| |leader of d2 is d1| |leader of d2 is d2|
    |leader of d2 is d3|) (or (not |leader of d2 is none|) (not |leader of d2 is d1|)) (or
    (not |leader of d2 is d2|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|))) (or
    (not |leader of d2 is d3|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|)
    (not |leader of d2 is d2|))) (or |number of d2 is 1| |number of d2 is 2| |number of d2 is 3|)
    (or (not |number of d2 is 1|) (not |number of d2 is 2|)) (or (not |number of d2 is 3|) (and
    (not |number of d2 is 1|) (not |number of d2 is 2|))) (or |next number of d2 is 1|
    |next number of d2 is 2| |next number of d2 is 3|) (or (not |next number of d2 is 1|)
    (not |next number of d2 is 2|)) (or (not |next number of d2 is 3|) (and
    (not |next number of d2 is 1|) (not |next number of d2 is 2|))) (or |priority of d2 is 1|
    |priority of d2 is 2| |priority of d2 is 3|) (or (not |priority of d2 is 1|)
    (not |priority of d2 is 2|)) (or (not |priority of d2 is 3|) (and (not |priority of d2 is 1|)
    (not |priority of d2 is 2|))) (or |startup priority of d2 is 1| |startup priority of d2 is 2|
    |startup priority of d2 is 3|) (or (not |startup priority of d2 is 1|)
    (not |startup priority of d2 is 2|)) (or (not |startup priority of d2 is 3|) (and
    (not |startup priority of d2 is 1|) (not |startup priority of d2 is 2|))) (or
    |power of d3 is off| |power of d3 is starting| |power of d3 is up| |power of d3 is held|) (or
    (not |power of d3 is off|) (not |power of d3 is starting|)) (or (not |power of d3 is up|) (and
    (not |power of d3 is off|) (not |power of d3 is starting|))) (or (not |power of d3 is held|)
    (and (not |power of d3 is off|) (not |power of d3 is starting|) (not |power of d3 is up|))))))
(declare-const n4 Bool)
(assert (= n4 (and n3 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
    |leader of d3 is d3|) (or (not |leader of d3 is none|) (not |leader of d3 is d1|)) (or
    (not |leader of d3 is d2|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|))) (or
    (not |leader of d3 is d3|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|)
    (not |leader of d3 is d2|))) (or |number of d3 is 1| |number of d3 is 2| |number of d3 is 3|)
    (or (not |number of d3 is 1|) (not |number of d3 is 2|)) (or (not |number of d3 is 3|) (and
    (not |number of d3 is 1|) (not |number of d3 is 2|))) (or |next number of d3 is 1|
    |next number of d3 is 2| |next number of d3 is 3|) (or (not |next number of d3 is 1|)
    (not |next number of d3 is 2|)) (or (not |next number of d3 is 3|) (and
    (not |next number of d3 is 1|) (not |next number of d3 is 2|))) (or |priority of d3 is 1|
    |priority of d3 is 2| |priority of d3 is 3|) (or (not |priority of d3 is 1|)
    (not |priority of d3 is 2|)) (or (not |priority of d3 is 3|) (and (not |priority of d3 is 1|)
    (not |priority of d3 is 2|))) (or |startup priority of d3 is 1| |startup priority of d3 is 2|
    |startup priority of d3 is 3|) (or (not |startup priority of d3 is 1|)
    (not |startup priority of d3 is 2|)) (or (not |startup priority of d3 is 3|) (and
    (not |startup priority of d3 is 1|) (not |startup priority of d3 is 2|))) (or
    |side of d1/2 is none| |side of d1/2 is east| |side of d1/2 is west|) (or
    (not |side of d1/2 is none|) (not |side of d1/2 is east|)) (or (not |side of d1/2 is west|) (and
    (not |side of d1/2 is none|) (not |side of d1/2 is east|))) (or |startup side of d1/2 is none|
    |startup side of d1/2 is east| |startup side of d1/2 is west|) (or
    (not |startup side of d1/2 is none|) (not |startup side of d1/2 is east|)) (or
    (not |startup side of d1/2 is west|) (and (not |startup side of d1/2 is none|)
    (not |startup side of d1/2 is east|))))))
(declare-const n5 Bool)
(assert (= n5 (and n4 (or |operational side of d1/2 is none| |operational side of d1/2 is east|
    |operational side of d1/2 is west|) (or (not |operational side of d1/2 is none|)
    (not |operational side of d1/2 is east|)) (or (not |operational side of d1/2 is west|) (and
    (not |operational side of d1/2 is none|) (not |operational side of d1/2 is east|))) (or
    |side of d1/3 is none| |side of d1/3 is east| |side of d1/3 is west|) (or
    (not |side of d1/3 is none|) (not |side of d1/3 is east|)) (or (not |side of d1/3 is west|) (and
    (not |side of d1/3 is none|) (not |side of d1/3 is east|))) (or |startup side of d1/3 is none|
    |startup side of d1/3 is east| |startup side of d1/3 is west|) (or
    (not |startup side of d1/3 is none|) (not |startup side of d1/3 is east|)) (or
    (not |startup side of d1/3 is west|) (and (not |startup side of d1/3 is none|)
    (not |startup side of d1/3 is east|))) (or |operational side of d1/3 is none|
    |operational side of d1/3 is east| |operational side of d1/3 is west|) (or
    (not |operational side of d1/3 is none|) (not |operational side of d1/3 is east|)) (or
    (not |operational side of d1/3 is west|) (and (not |operational side of d1/3 is none|)
    (not |operational side of d1/3 is east|))) (or |side of d2/1 is none| |side of d2/1 is east|
    |side of d2/1 is west|) (or (not |side of d2/1 is none|) (not |side of d2/1 is east|)) (or
    (not |side of d2/1 is west|) (and (not |side of d2/1 is none|) (not |side of d2/1 is east|)))
    (or |startup side of d2/1 is none| |startup side of d2/1 is east| |startup side of d2/1 is west|)
    (or (not |startup side of d2/1 is none|) (not |startup side of d2/1 is east|)) (or
    (not |startup side of d2/1 is west|) (and (not |startup side of d2/1 is none|)
    (not |startup side of d2/1 is east|))) (or |operational side of d2/1 is none|
    |operational side of d2/1 is east| |operational side of d2/1 is west|) (or
    (not |operational side of d2/1 is none|) (not |operational side of d2/1 is east|)) (or
    (not |operational side of d2/1 is west|) (and (not |operational side of d2/1 is none|)
    (not |operational side of d2/1 is east|))) (or |side of d2/3 is none| |side of d2/3 is east|
    |side of d2/3 is west|) (or (not |side of d2/3 is none|) (not |side of d2/3 is east|)) (or
    (not |side of d2/3 is west|) (and (not |side of d2/3 is none|) (not |side of d2/3 is east|))))))
(declare-const n6 Bool)
(assert (= n6 (and n5 (or |startup side of d2/3 is none| |startup side of d2/3 is east|
    |startup side of d2/3 is west|) (or (not |startup side of d2/3 is none|)
    (not |startup side of d2/3 is east|)) (or (not |startup side of d2/3 is west|) (and
    (not |startup side of d2/3 is none|) (not |startup side of d2/3 is east|))) (or
    |operational side of d2/3 is none| |operational side of d2/3 is east|
    |operational side of d2/3 is west|) (or (not |operational side of d2/3 is none|)
    (not |operational side of d2/3 is east|)) (or (not |operational side of d2/3 is west|) (and
    (not |operational side of d2/3 is none|) (not |operational side of d2/3 is east|))) (or
    |side of d3/1 is none| |side of d3/1 is east| |side of d3/1 is west|) (or
    (not |side of d3/1 is none|) (not |side of d3/1 is east|)) (or (not |side of d3/1 is west|) (and
    (not |side of d3/1 is none|) (not |side of d3/1 is east|))) (or |startup side of d3/1 is none|
    |startup side of d3/1 is east| |startup side of d3/1 is west|) (or
    (not |startup side of d3/1 is none|) (not |startup side of d3/1 is east|)) (or
    (not |startup side of d3/1 is west|) (and (not |startup side of d3/1 is none|)
    (not |startup side of d3/1 is east|))) (or |operational side of d3/1 is none|
    |operational side of d3/1 is east| |operational side of d3/1 is west|) (or
    (not |operational side of d3/1 is none|) (not |operational side of d3/1 is east|)) (or
    (not |operational side of d3/1 is west|) (and (not |operational side of d3/1 is none|)
    (not |operational side of d3/1 is east|))) (or |side of d3/2 is none| |side of d3/2 is east|
    |side of d3/2 is west|) (or (not |side of d3/2 is none|) (not |side of d3/2 is east|)) (or
    (not |side of d3/2 is west|) (and (not |side of d3/2 is none|) (not |side of d3/2 is east|)))
    (or |startup side of d3/2 is none| |startup side of d3/2 is east| |startup side of d3/2 is west|)
    (or (not |startup side of d3/2 is none|) (not |startup side of d3/2 is east|)) (or
    (not |startup side of d3/2 is west|) (and (not |startup side of d3/2 is none|)
    (not |startup side of d3/2 is east|))) (or |operational side of d3/2 is none|
    |operational side of d3/2 is east| |operational side of d3/2 is west|) (or
    (not |operational side of d3/2 is none|) (not |operational side of d3/2 is east|)) (or
    (not |operational side of d3/2 is west|) (and (not |operational side of d3/2 is none|)
    (not |operational side of d3/2 is east|))))))
(declare-const n7 Bool)
(assert (= n7 (and (or |power of d1 is off'| |power of d1 is starting'| |power of d1 is up'|
    |power of d1 is held'|) (or (not |power of d1 is off'|) (not |power of d1 is starting'|)) (or
    (not |power of d1 is up'|) (and (not |power of d1 is off'|) (not |power of d1 is starting'|)))
    (or (not |power of d1 is held'|) (and (not |power of d1 is off'|)
    (not |power of d1 is starting'|) (not |power of d1 is up'|))) (or |leader of d1 is none'|
    |leader of d1 is d1'| |leader of d1 is d2'| |leader of d1 is d3'|) (or
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|)) (or (not |leader of d1 is d2'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|))) (or (not |leader of d1 is d3'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|) (not |leader of d1 is d2'|))) (or
    |number of d1 is 1'| |number of d1 is 2'| |number of d1 is 3'|) (or (not |number of d1 is 1'|)
    (not |number of d1 is 2'|)) (or (not |number of d1 is 3'|) (and (not |number of d1 is 1'|)
    (not |number of d1 is 2'|))) (or |next number of d1 is 1'| |next number of d1 is 2'|
    |next number of d1 is 3'|) (or (not |next number of d1 is 1'|) (not |next number of d1 is 2'|))
    (or (not |next number of d1 is 3'|) (and (not |next number of d1 is 1'|)
    (not |next number of d1 is 2'|))) (or |priority of d1 is 1'| |priority of d1 is 2'|
    |priority of d1 is 3'|) (or (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)) (or
    (not |priority of d1 is 3'|) (and (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)))
    (or |startup priority of d1 is 1'| |startup priority of d1 is 2'| |startup priority of d1 is 3'|)
    (or (not |startup priority of d1 is 1'|) (not |startup priority of d1 is 2'|)) (or
    (not |startup priority of d1 is 3'|) (and (not |startup priority of d1 is 1'|)
    (not |startup priority of d1 is 2'|))) (or |power of d2 is off'| |power of d2 is starting'|
    |power of d2 is up'| |power of d2 is held'|) (or (not |power of d2 is off'|)
    (not |power of d2 is starting'|)) (or (not |power of d2 is up'|) (and
    (not |power of d2 is off'|) (not |power of d2 is starting'|))) (or (not |power of d2 is held'|)
    (and (not |power of d2 is off'|) (not |power of d2 is starting'|) (not |power of d2 is up'|))))))
(declare-const n8 Bool)
(assert (= n8 (and n7 (or |leader of d2 is none'| |leader of d2 is d1'| |leader of d2 is d2'|
    |leader of d2 is d3'|) (or (not |leader of d2 is none'|) (not |leader of d2 is d1'|)) (or
    (not |leader of d2 is d2'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|))) (or
    (not |leader of d2 is d3'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|)
    (not |leader of d2 is d2'|))) (or |number of d2 is 1'| |number of d2 is 2'| |number of d2 is 3'|)
    (or (not |number of d2 is 1'|) (not |number of d2 is 2'|)) (or (not |number of d2 is 3'|) (and
    (not |number of d2 is 1'|) (not |number of d2 is 2'|))) (or |next number of d2 is 1'|
    |next number of d2 is 2'| |next number of d2 is 3'|) (or (not |next number of d2 is 1'|)
    (not |next number of d2 is 2'|)) (or (not |next number of d2 is 3'|) (and
    (not |next number of d2 is 1'|) (not |next number of d2 is 2'|))) (or |priority of d2 is 1'|
    |priority of d2 is 2'| |priority of d2 is 3'|) (or (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|)) (or (not |priority of d2 is 3'|) (and (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|))) (or |startup priority of d2 is 1'| |startup priority of d2 is 2'|
    |startup priority of d2 is 3'|) (or (not |startup priority of d2 is 1'|)
    (not |startup priority of d2 is 2'|)) (or (not |startup priority of d2 is 3'|) (and
    (not |startup priority of d2 is 1'|) (not |startup priority of d2 is 2'|))) (or
    |power of d3 is off'| |power of d3 is starting'| |power of d3 is up'| |power of d3 is held'|)
    (or (not |power of d3 is off'|) (not |power of d3 is starting'|)) (or (not |power of d3 is up'|)
    (and (not |power of d3 is off'|) (not |power of d3 is starting'|))) (or
    (not |power of d3 is held'|) (and (not |power of d3 is off'|) (not |power of d3 is starting'|)
    (not |power of d3 is up'|))))))
(declare-const n9 Bool)
(assert (= n9 (and n8 (or |leader of d3 is none'| |leader of d3 is d1'| |leader of d3 is d2'|
    |leader of d3 is d3'|) (or (not |leader of d3 is none'|) (not |leader of d3 is d1'|)) (or
    (not |leader of d3 is d2'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|))) (or
    (not |leader of d3 is d3'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|)
    (not |leader of d3 is d2'|))) (or |number of d3 is 1'| |number of d3 is 2'| |number of d3 is 3'|)
    (or (not |number of d3 is 1'|) (not |number of d3 is 2'|)) (or (not |number of d3 is 3'|) (and
    (not |number of d3 is 1'|) (not |number of d3 is 2'|))) (or |next number of d3 is 1'|
    |next number of d3 is 2'| |next number of d3 is 3'|) (or (not |next number of d3 is 1'|)
    (not |next number of d3 is 2'|)) (or (not |next number of d3 is 3'|) (and
    (not |next number of d3 is 1'|) (not |next number of d3 is 2'|))) (or |priority of d3 is 1'|
    |priority of d3 is 2'| |priority of d3 is 3'|) (or (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|)) (or (not |priority of d3 is 3'|) (and (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|))) (or |startup priority of d3 is 1'| |startup priority of d3 is 2'|
    |startup priority of d3 is 3'|) (or (not |startup priority of d3 is 1'|)
    (not |startup priority of d3 is 2'|)) (or (not |startup priority of d3 is 3'|) (and
    (not |startup priority of d3 is 1'|) (not |startup priority of d3 is 2'|))) (or
    |side of d1/2 is none'| |side of d1/2 is east'| |side of d1/2 is west'|) (or
    (not |side of d1/2 is none'|) (not |side of d1/2 is east'|)) (or (not |side of d1/2 is west'|)
    (and (not |side of d1/2 is none'|) (not |side of d1/2 is east'|))) (or
    |startup side of d1/2 is none'| |startup side of d1/2 is east'| |startup side of d1/2 is west'|)
    (or (not |startup side of d1/2 is none'|) (not |startup side of d1/2 is east'|)) (or
    (not |startup side of d1/2 is west'|) (and (not |startup side of d1/2 is none'|)
    (not |startup side of d1/2 is east'|))))))
(declare-const n10 Bool)
(assert (= n10 (and n9 (or |operational side of d1/2 is none'| |operational side of d1/2 is east'|
    |operational side of d1/2 is west'|) (or (not |operational side of d1/2 is none'|)
    (not |operational side of d1/2 is east'|)) (or (not |operational side of d1/2 is west'|) (and
    (not |operational side of d1/2 is none'|) (not |operational side of d1/2 is east'|))) (or
    |side of d1/3 is none'| |side of d1/3 is east'| |side of d1/3 is west'|) (or
    (not |side of d1/3 is none'|) (not |side of d1/3 is east'|)) (or (not |side of d1/3 is west'|)
    (and (not |side of d1/3 is none'|) (not |side of d1/3 is east'|))) (or
    |startup side of d1/3 is none'| |startup side of d1/3 is east'| |startup side of d1/3 is west'|)
    (or (not |startup side of d1/3 is none'|) (not |startup side of d1/3 is east'|)) (or
    (not |startup side of d1/3 is west'|) (and (not |startup side of d1/3 is none'|)
    (not |startup side of d1/3 is east'|))) (or |operational side of d1/3 is none'|
    |operational side of d1/3 is east'| |operational side of d1/3 is west'|) (or
    (not |operational side of d1/3 is none'|) (not |operational side of d1/3 is east'|)) (or
    (not |operational side of d1/3 is west'|) (and (not |operational side of d1/3 is none'|)
    (not |operational side of d1/3 is east'|))) (or |side of d2/1 is none'| |side of d2/1 is east'|
    |side of d2/1 is west'|) (or (not |side of d2/1 is none'|) (not |side of d2/1 is east'|)) (or
    (not |side of d2/1 is west'|) (and (not |side of d2/1 is none'|) (not |side of d2/1 is east'|)))
    (or |startup side of d2/1 is none'| |startup side of d2/1 is east'|
    |startup side of d2/1 is west'|) (or (not |startup side of d2/1 is none'|)
    (not |startup side of d2/1 is east'|)) (or (not |startup side of d2/1 is west'|) (and
    (not |startup side of d2/1 is none'|) (not |startup side of d2/1 is east'|))) (or
    |operational side of d2/1 is none'| |operational side of d2/1 is east'|
    |operational side of d2/1 is west'|) (or (not |operational side of d2/1 is none'|)
    (not |operational side of d2/1 is east'|)) (or (not |operational side of d2/1 is west'|) (and
    (not |operational side of d2/1 is none'|) (not |operational side of d2/1 is east'|))) (or
    |side of d2/3 is none'| |side of d2/3 is east'| |side of d2/3 is west'|) (or
    (not |side of d2/3 is none'|) (not |side of d2/3 is east'|)) (or (not |side of d2/3 is west'|)
    (and (not |side of d2/3 is none'|) (not |side of d2/3 is east'|))))))
(declare-const n11 Bool)
(assert (= n11 (and n10 (or |startup side of d2/3 is none'| |startup side of d2/3 is east'|
    |startup side of d2/3 is west'|) (or (not |startup side of d2/3 is none'|)
    (not |startup side of d2/3 is east'|)) (or (not |startup side of d2/3 is west'|) (and
    (not |startup side of d2/3 is none'|) (not |startup side of d2/3 is east'|))) (or
    |operational side of d2/3 is none'| |operational side of d2/3 is east'|
    |operational side of d2/3 is west'|) (or (not |operational side of d2/3 is none'|)
    (not |operational side of d2/3 is east'|)) (or (not |operational side of d2/3 is west'|) (and
    (not |operational side of d2/3 is none'|) (not |operational side of d2/3 is east'|))) (or
    |side of d3/1 is none'| |side of d3/1 is east'| |side of d3/1 is west'|) (or
    (not |side of d3/1 is none'|) (not |side of d3/1 is east'|)) (or (not |side of d3/1 is west'|)
    (and (not |side of d3/1 is none'|) (not |side of d3/1 is east'|))) (or
    |startup side of d3/1 is none'| |startup side of d3/1 is east'| |startup side of d3/1 is west'|)
    (or (not |startup side of d3/1 is none'|) (not |startup side of d3/1 is east'|)) (or
    (not |startup side of d3/1 is west'|) (and (not |startup side of d3/1 is none'|)
    (not |startup side of d3/1 is east'|))) (or |operational side of d3/1 is none'|
    |operational side of d3/1 is east'| |operational side of d3/1 is west'|) (or
    (not |operational side of d3/1 is none'|) (not |operational side of d3/1 is east'|)) (or
    (not |operational side of d3/1 is west'|) (and (not |operational side of d3/1 is none'|)
    (not |operational side of d3/1 is east'|))) (or |side of d3/2 is none'| |side of d3/2 is east'|
    |side of d3/2 is west'|) (or (not |side of d3/2 is none'|) (not |side of d3/2 is east'|)) (or
    (not |side of d3/2 is west'|) (and (not |side of d3/2 is none'|) (not |side of d3/2 is east'|)))
    (or |startup side of d3/2 is none'| |startup side of d3/2 is east'|
    |startup side of d3/2 is west'|) (or (not |startup side of d3/2 is none'|)
    (not |startup side of d3/2 is east'|)) (or (not |startup side of d3/2 is west'|) (and
    (not |startup side of d3/2 is none'|) (not |startup side of d3/2 is east'|))) (or
    |operational side of d3/2 is none'| |operational side of d3/2 is east'|
    |operational side of d3/2 is west'|) (or (not |operational side of d3/2 is none'|)
    (not |operational side of d3/2 is east'|)) (or (not |operational side of d3/2 is west'|) (and
    (not |operational side of d3/2 is none'|) (not |operational side of d3/2 is east'|))))))
(declare-const n12 Bool)
(assert (= n12 (and (not |power of d1 is up|) (not |power of d1 is held|))))
(declare-const n13 Bool)
(assert (= n13 (and (not |power of d2 is up|) (not |power of d2 is held|))))
(declare-const n14 Bool)
(assert (= n14 (and (not |power of d3 is up|) (not |power of d3 is held|))))
(declare-const n15 Bool)
(assert (= n15 (and |d1/2 enabled| |d2/1 enabled| |d1--d2 plugged| (not |d1--d2 broken|) (not n12)
    (not n13))))
(declare-const n16 Bool)
(assert (= n16 (and |d1/3 enabled| |d3/1 enabled| |d1--d3 plugged| (not |d1--d3 broken|) (not n12)
    (not n14))))
(declare-const n17 Bool)
(assert (= n17 (and |d2/3 enabled| |d3/2 enabled| |d2--d3 plugged| (not |d2--d3 broken|) (not n13)
    (not n14))))
(declare-const n18 Bool)
(assert (= n18 (and |d1/2 enabled| |d3/1 enabled| |rival plugged| (not |rival broken|) (not n12)
    (not n14))))
(declare-const n19 Bool)
(assert (= n19 (and (or (not |operational side of d2/1 is none|)
    (not |operational side of d2/3 is none|)) (or (not |operational side of d2/1 is east|)
    (not |operational side of d2/3 is east|)) (or (not |operational side of d2/1 is west|)
    (not |operational side of d2/3 is west|)))))
(declare-const n20 Bool)
(assert (= n20 (and n17 (not n19))))
(declare-const n21 Bool)
(assert (= n21 (and (or (not |operational side of d1/2 is none|)
    (not |operational side of d1/3 is none|)) (or (not |operational side of d1/2 is east|)
    (not |operational side of d1/3 is east|)) (or (not |operational side of d1/2 is west|)
    (not |operational side of d1/3 is west|)))))
(declare-const n22 Bool)
(assert (= n22 (and |power of d1 is up| |power of d2 is up| (not |operational side of d1/2 is none|)
    (not |operational side of d2/1 is none|) n15 (not n20) (or (not n16) n21))))
(declare-const n23 Bool)
(assert (= n23 (and (or (not |operational side of d3/1 is none|)
    (not |operational side of d3/2 is none|)) (or (not |operational side of d3/1 is east|)
    (not |operational side of d3/2 is east|)) (or (not |operational side of d3/1 is west|)
    (not |operational side of d3/2 is west|)))))
(declare-const n24 Bool)
(assert (= n24 (and n17 (not n23))))
(declare-const n25 Bool)
(assert (= n25 (and |power of d1 is up| |power of d3 is up| (not |operational side of d1/3 is none|)
    (not |operational side of d3/1 is none|) n16 (not n24) (or (not n15) n21))))
(declare-const n26 Bool)
(assert (= n26 (and |power of d2 is up| |power of d3 is up| (not |operational side of d2/3 is none|)
    (not |operational side of d3/2 is none|) n17 (or (not n16) n23) (or (not n18) n23) (or (not n15)
    n19))))
(declare-const n27 Bool)
(assert (= n27 (and |power of d1 is up| |power of d3 is up| (not |operational side of d1/2 is none|)
    (not |operational side of d3/1 is none|) n18 (not n24))))
(declare-const n28 Bool)
(assert (= n28 (and (not n26) (or (not n22) (and (not n25) (not n27))))))
(declare-const n29 Bool)
(assert (= n29 (and (not n25) (not n27) (or (not n22) n28))))
(declare-const n30 Bool)
(assert (= n30 (and (not n22) (or n28 n29))))
(declare-const n31 Bool)
(assert (= n31 (and |d2/1 enabled| |d1--d2 plugged| (not |d1--d2 broken|) |d1/2 enabled'| (not n12)
    (not n13))))
(declare-const n32 Bool)
(assert (= n32 (and |d3/1 enabled| |d1--d3 plugged| (not |d1--d3 broken|) |d1/3 enabled'| (not n12)
    (not n14))))
(declare-const n33 Bool)
(assert (= n33 (and |d3/1 enabled| |rival plugged| (not |rival broken|) |d1/2 enabled'| (not n12)
    (not n14))))
(declare-const n34 Bool)
(assert (= n34 (and (or (not |operational side of d1/2 is none'|)
    (not |operational side of d1/3 is none'|)) (or (not |operational side of d1/2 is east'|)
    (not |operational side of d1/3 is east'|)) (or (not |operational side of d1/2 is west'|)
    (not |operational side of d1/3 is west'|)))))
(declare-const n35 Bool)
(assert (= n35 (and |power of d1 is up| |power of d2 is up| (not |operational side of d2/1 is none|)
    (not |operational side of d1/2 is none'|) (not n20) n31 (or (not n32) n34))))
(declare-const n36 Bool)
(assert (= n36 (and |power of d1 is up| |power of d3 is up| (not |operational side of d3/1 is none|)
    (not |operational side of d1/3 is none'|) (not n24) n32 (or (not n31) n34))))
(declare-const n37 Bool)
(assert (= n37 (and |power of d2 is up| |power of d3 is up| (not |operational side of d2/3 is none|)
    (not |operational side of d3/2 is none|) n17 (or n23 (not n32)) (or n23 (not n33)) (or n19
    (not n31)))))
(declare-const n38 Bool)
(assert (= n38 (and |power of d1 is up| |power of d3 is up| (not |operational side of d3/1 is none|)
    (not |operational side of d1/2 is none'|) (not n24) n33)))
(declare-const n39 Bool)
(assert (= n39 (and (not n37) (or (not n35) (and (not n36) (not n38))))))
(declare-const n40 Bool)
(assert (= n40 (and (not n36) (not n38) (or (not n35) n39))))
(declare-const n41 Bool)
(assert (= n41 (and (not n35) (or n39 n40))))
(declare-const n42 Bool)
(assert (= n42 (and |power of d1 is up| (not |leader of d1 is none|))))
(declare-const n43 Bool)
(assert (= n43 (and |power of d1 is up| |leader of d1 is d1|)))
(declare-const n44 Bool)
(assert (= n44 (and |power of d2 is up| (not |leader of d2 is none|))))
(declare-const n45 Bool)
(assert (= n45 (and |power of d2 is up| |leader of d2 is d2|)))
(declare-const n46 Bool)
(assert (= n46 (and |power of d3 is up| (not |leader of d3 is none|))))
(declare-const n47 Bool)
(assert (= n47 (and |power of d3 is up| |leader of d3 is d3|)))
(declare-const n48 Bool)
(assert (= n48 (and |power of d2 is up| |leader of d2 is d2| (not n30))))
(declare-const n49 Bool)
(assert (= n49 (and |power of d3 is up| |leader of d3 is d3| (not n29))))
(declare-const n50 Bool)
(assert (= n50 (and (not n43) (or n48 n49 (and (not n42) (or (not |power of d1 is up|)
    (not |leader of d1 is none|) (and |power of d2 is up| (not |leader of d2 is none|) (not n30))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n29))))))))
(declare-const n51 Bool)
(assert (= n51 (and |power of d1 is up| |leader of d1 is d1| (not n30))))
(declare-const n52 Bool)
(assert (= n52 (and |power of d3 is up| |leader of d3 is d3| (not n28))))
(declare-const n53 Bool)
(assert (= n53 (and (not n45) (or n51 n52 (and (not n44) (or (not |power of d2 is up|)
    (not |leader of d2 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n30))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n28))))))))
(declare-const n54 Bool)
(assert (= n54 (and |power of d1 is up| |leader of d1 is d1| (not n29))))
(declare-const n55 Bool)
(assert (= n55 (and |power of d2 is up| |leader of d2 is d2| (not n28))))
(declare-const n56 Bool)
(assert (= n56 (and (not n47) (or n54 n55 (and (not n46) (or (not |power of d3 is up|)
    (not |leader of d3 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n29))
    (and |power of d2 is up| (not |leader of d2 is none|) (not n28))))))))
(declare-const n57 Bool)
(assert (= n57 (and (not |number of d2 is 2|) (not |number of d2 is 3|))))
(declare-const n58 Bool)
(assert (= n58 (and (not |number of d1 is 2|) (not |number of d1 is 3|))))
(declare-const n59 Bool)
(assert (= n59 (and (or (not |number of d1 is 3|) (not |number of d2 is 2|)) (or
    (not |number of d2 is 1|) n58))))
(declare-const n60 Bool)
(assert (= n60 (and |priority of d1 is 3| |priority of d2 is 2|)))
(declare-const n61 Bool)
(assert (= n61 (and (not |priority of d1 is 2|) (not |priority of d1 is 3|))))
(declare-const n62 Bool)
(assert (= n62 (and |priority of d2 is 1| (not n61))))
(declare-const n63 Bool)
(assert (= n63 (and |priority of d1 is 2| |priority of d2 is 3|)))
(declare-const n64 Bool)
(assert (= n64 (and (not |priority of d2 is 2|) (not |priority of d2 is 3|))))
(declare-const n65 Bool)
(assert (= n65 (and |priority of d1 is 1| (not n64))))
(declare-const n66 Bool)
(assert (= n66 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (or (and |number of d1 is 2|
    |number of d2 is 3|) (and |number of d1 is 1| (not n57)) n59))) (not n63) (not n65))))
(declare-const n67 Bool)
(assert (= n67 (and (not n30) (not n53) (not n60) (not n62) (not n66))))
(declare-const n68 Bool)
(assert (= n68 (and (not |number of d3 is 2|) (not |number of d3 is 3|))))
(declare-const n69 Bool)
(assert (= n69 (and (or (not |number of d1 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n58))))
(declare-const n70 Bool)
(assert (= n70 (and |priority of d1 is 3| |priority of d3 is 2|)))
(declare-const n71 Bool)
(assert (= n71 (and |priority of d3 is 1| (not n61))))
(declare-const n72 Bool)
(assert (= n72 (and |priority of d1 is 2| |priority of d3 is 3|)))
(declare-const n73 Bool)
(assert (= n73 (and (not |priority of d3 is 2|) (not |priority of d3 is 3|))))
(declare-const n74 Bool)
(assert (= n74 (and |priority of d1 is 1| (not n73))))
(declare-const n75 Bool)
(assert (= n75 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (or (and |number of d1 is 2|
    |number of d3 is 3|) (and |number of d1 is 1| (not n68)) n69))) (not n72) (not n74))))
(declare-const n76 Bool)
(assert (= n76 (and (not n29) (not n56) (not n70) (not n71) (not n75))))
(declare-const n77 Bool)
(assert (= n77 (and (not n60) (not n62) (or |d2 senior to d1| (and (not |d1 senior to d2|) (not n59))))))
(declare-const n78 Bool)
(assert (= n78 (and (not n30) (not n50) (not n63) (not n65) (not n77))))
(declare-const n79 Bool)
(assert (= n79 (and (or (not |number of d2 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n57))))
(declare-const n80 Bool)
(assert (= n80 (and |priority of d2 is 3| |priority of d3 is 2|)))
(declare-const n81 Bool)
(assert (= n81 (and |priority of d3 is 1| (not n64))))
(declare-const n82 Bool)
(assert (= n82 (and |priority of d2 is 2| |priority of d3 is 3|)))
(declare-const n83 Bool)
(assert (= n83 (and |priority of d2 is 1| (not n73))))
(declare-const n84 Bool)
(assert (= n84 (and (or |d2 senior to d3| (and (not |d3 senior to d2|) (or (and |number of d2 is 2|
    |number of d3 is 3|) (and |number of d2 is 1| (not n68)) n79))) (not n82) (not n83))))
(declare-const n85 Bool)
(assert (= n85 (and (not n28) (not n56) (not n80) (not n81) (not n84))))
(declare-const n86 Bool)
(assert (= n86 (and (not n70) (not n71) (or |d3 senior to d1| (and (not |d1 senior to d3|) (not n69))))))
(declare-const n87 Bool)
(assert (= n87 (and (not n29) (not n50) (not n72) (not n74) (not n86))))
(declare-const n88 Bool)
(assert (= n88 (and (not n80) (not n81) (or |d3 senior to d2| (and (not |d2 senior to d3|) (not n79))))))
(declare-const n89 Bool)
(assert (= n89 (and (not n28) (not n53) (not n82) (not n83) (not n88))))
(declare-const n90 Bool)
(assert (= n90 (and |power of d1 is up| |leader of d1 is d1| (not n50) (not n67) (not n76))))
(declare-const n91 Bool)
(assert (= n91 (and |power of d2 is up| |leader of d2 is d2| (not n53) (not n78) (not n85))))
(declare-const n92 Bool)
(assert (= n92 (and |power of d3 is up| |leader of d3 is d3| (not n56) (not n87) (not n89))))
(declare-const n93 Bool)
(assert (= n93 (and |leader of d1 is d2| (not n30) n91)))
(declare-const n94 Bool)
(assert (= n94 (and |leader of d1 is d3| (not n29) n92)))
(declare-const n95 Bool)
(assert (= n95 (and |leader of d2 is d1| (not n30) n90)))
(declare-const n96 Bool)
(assert (= n96 (and |leader of d2 is d3| (not n28) n92)))
(declare-const n97 Bool)
(assert (= n97 (and |leader of d3 is d1| (not n29) n90)))
(declare-const n98 Bool)
(assert (= n98 (and |leader of d3 is d2| (not n28) n91)))
(declare-const n99 Bool)
(assert (= n99 (and (or (not |number of d1 is 1|) (not |number of d2 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d2 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d2 is 3|)))))
(declare-const n100 Bool)
(assert (= n100 (and (not n45) (or (not |leader of d2 is d1|) n30) (or (not |leader of d2 is d3|)
    n28))))
(declare-const n101 Bool)
(assert (= n101 (and |leader of d1 is d1| |leader of d2 is d1|)))
(declare-const n102 Bool)
(assert (= n102 (and |leader of d1 is d2| |leader of d2 is d2|)))
(declare-const n103 Bool)
(assert (= n103 (and |leader of d1 is d3| |leader of d2 is d3|)))
(declare-const n104 Bool)
(assert (= n104 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n44)
    (not n63) (not n65) (not n77))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n90 n93 n94 n100 n101 n102 n103))))
(declare-const n105 Bool)
(assert (= n105 (and (not n30) (not n99) (not n104))))
(declare-const n106 Bool)
(assert (= n106 (and (or (not |number of d1 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d3 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n107 Bool)
(assert (= n107 (and (not n47) (or (not |leader of d3 is d1|) n29) (or (not |leader of d3 is d2|)
    n28))))
(declare-const n108 Bool)
(assert (= n108 (and |leader of d1 is d1| |leader of d3 is d1|)))
(declare-const n109 Bool)
(assert (= n109 (and |leader of d1 is d2| |leader of d3 is d2|)))
(declare-const n110 Bool)
(assert (= n110 (and |leader of d1 is d3| |leader of d3 is d3|)))
(declare-const n111 Bool)
(assert (= n111 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n46)
    (not n72) (not n74) (not n86))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n90 n93 n94 n107 n108 n109 n110))))
(declare-const n112 Bool)
(assert (= n112 (and (not n29) (not n106) (not n111))))
(declare-const n113 Bool)
(assert (= n113 (and |power of d1 is up| (not |leader of d1 is none|) (or n43 n48 n49) (not n90)
    (not n93) (not n94))))
(declare-const n114 Bool)
(assert (= n114 (and (not n105) (not n112) n113)))
(declare-const n115 Bool)
(assert (= n115 (and (not n43) (or (not |leader of d1 is d2|) n30) (or (not |leader of d1 is d3|)
    n29))))
(declare-const n116 Bool)
(assert (= n116 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n42)
    (not n60) (not n62) (not n66))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n91 n95 n96 n101 n102 n103 n115))))
(declare-const n117 Bool)
(assert (= n117 (and (not n30) (not n99) (not n116))))
(declare-const n118 Bool)
(assert (= n118 (and (or (not |number of d2 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d2 is 2|) (not |number of d3 is 2|)) (or (not |number of d2 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n119 Bool)
(assert (= n119 (and |power of d2 is up| |leader of d2 is none| (or n46 n82 n83 n88))))
(declare-const n120 Bool)
(assert (= n120 (and |leader of d2 is d1| |leader of d3 is d1|)))
(declare-const n121 Bool)
(assert (= n121 (and |leader of d2 is d2| |leader of d3 is d2|)))
(declare-const n122 Bool)
(assert (= n122 (and |leader of d2 is d3| |leader of d3 is d3|)))
(declare-const n123 Bool)
(assert (= n123 (and (not n119) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n91 n95 n96 n107 n120 n121 n122))))
(declare-const n124 Bool)
(assert (= n124 (and (not n28) (not n118) (not n123))))
(declare-const n125 Bool)
(assert (= n125 (and |power of d2 is up| (not |leader of d2 is none|) (or n45 n51 n52) (not n91)
    (not n95) (not n96))))
(declare-const n126 Bool)
(assert (= n126 (and (not n117) (not n124) n125)))
(declare-const n127 Bool)
(assert (= n127 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n42)
    (not n70) (not n71) (not n75))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n92 n97 n98 n108 n109 n110 n115))))
(declare-const n128 Bool)
(assert (= n128 (and (not n29) (not n106) (not n127))))
(declare-const n129 Bool)
(assert (= n129 (and |power of d3 is up| |leader of d3 is none| (or n44 n80 n81 n84))))
(declare-const n130 Bool)
(assert (= n130 (and (not n129) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n92 n97 n98 n100 n120 n121 n122))))
(declare-const n131 Bool)
(assert (= n131 (and (not n28) (not n118) (not n130))))
(declare-const n132 Bool)
(assert (= n132 (and |power of d3 is up| (not |leader of d3 is none|) (or n47 n54 n55) (not n92)
    (not n97) (not n98))))
(declare-const n133 Bool)
(assert (= n133 (and (not n128) (not n131) n132)))
(declare-const n134 Bool)
(assert (= n134 (and |power of d2 is up| |leader of d2 is d2| (not n41))))
(declare-const n135 Bool)
(assert (= n135 (and |power of d3 is up| |leader of d3 is d3| (not n40))))
(declare-const n136 Bool)
(assert (= n136 (and (not n43) (or n134 n135 (and (not n42) (or (not |power of d1 is up|)
    (not |leader of d1 is none|) (and |power of d2 is up| (not |leader of d2 is none|) (not n41))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n40))))))))
(declare-const n137 Bool)
(assert (= n137 (and |power of d1 is up| |leader of d1 is d1| (not n41))))
(declare-const n138 Bool)
(assert (= n138 (and |power of d3 is up| |leader of d3 is d3| (not n39))))
(declare-const n139 Bool)
(assert (= n139 (and (not n45) (or n137 n138 (and (not n44) (or (not |power of d2 is up|)
    (not |leader of d2 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n41))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n39))))))))
(declare-const n140 Bool)
(assert (= n140 (and |power of d1 is up| |leader of d1 is d1| (not n40))))
(declare-const n141 Bool)
(assert (= n141 (and |power of d2 is up| |leader of d2 is d2| (not n39))))
(declare-const n142 Bool)
(assert (= n142 (and (not n47) (or n140 n141 (and (not n46) (or (not |power of d3 is up|)
    (not |leader of d3 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n40))
    (and |power of d2 is up| (not |leader of d2 is none|) (not n39))))))))
(declare-const n143 Bool)
(assert (= n143 (and (not |number of d1 is 2'|) (not |number of d1 is 3'|))))
(declare-const n144 Bool)
(assert (= n144 (and (or (not |number of d2 is 2|) (not |number of d1 is 3'|)) (or
    (not |number of d2 is 1|) n143))))
(declare-const n145 Bool)
(assert (= n145 (and |priority of d2 is 2| |priority of d1 is 3'|)))
(declare-const n146 Bool)
(assert (= n146 (and (not |priority of d1 is 2'|) (not |priority of d1 is 3'|))))
(declare-const n147 Bool)
(assert (= n147 (and |priority of d2 is 1| (not n146))))
(declare-const n148 Bool)
(assert (= n148 (and |priority of d2 is 3| |priority of d1 is 2'|)))
(declare-const n149 Bool)
(assert (= n149 (and |priority of d1 is 1'| (not n64))))
(declare-const n150 Bool)
(assert (= n150 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (or (and |number of d2 is 3|
    |number of d1 is 2'|) (and |number of d1 is 1'| (not n57)) n144))) (not n148) (not n149))))
(declare-const n151 Bool)
(assert (= n151 (and (not n41) (not n139) (not n145) (not n147) (not n150))))
(declare-const n152 Bool)
(assert (= n152 (and (or (not |number of d3 is 2|) (not |number of d1 is 3'|)) (or
    (not |number of d3 is 1|) n143))))
(declare-const n153 Bool)
(assert (= n153 (and |priority of d3 is 2| |priority of d1 is 3'|)))
(declare-const n154 Bool)
(assert (= n154 (and |priority of d3 is 1| (not n146))))
(declare-const n155 Bool)
(assert (= n155 (and |priority of d3 is 3| |priority of d1 is 2'|)))
(declare-const n156 Bool)
(assert (= n156 (and |priority of d1 is 1'| (not n73))))
(declare-const n157 Bool)
(assert (= n157 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (or (and |number of d3 is 3|
    |number of d1 is 2'|) (and |number of d1 is 1'| (not n68)) n152))) (not n155) (not n156))))
(declare-const n158 Bool)
(assert (= n158 (and (not n40) (not n142) (not n153) (not n154) (not n157))))
(declare-const n159 Bool)
(assert (= n159 (and (not n145) (not n147) (or |d2 senior to d1| (and (not |d1 senior to d2|)
    (not n144))))))
(declare-const n160 Bool)
(assert (= n160 (and (not n41) (not n136) (not n148) (not n149) (not n159))))
(declare-const n161 Bool)
(assert (= n161 (and (not n39) (not n80) (not n81) (not n84) (not n142))))
(declare-const n162 Bool)
(assert (= n162 (and (not n153) (not n154) (or |d3 senior to d1| (and (not |d1 senior to d3|)
    (not n152))))))
(declare-const n163 Bool)
(assert (= n163 (and (not n40) (not n136) (not n155) (not n156) (not n162))))
(declare-const n164 Bool)
(assert (= n164 (and (not n39) (not n82) (not n83) (not n88) (not n139))))
(declare-const n165 Bool)
(assert (= n165 (and |power of d1 is up| |leader of d1 is d1| (not n136) (not n151) (not n158))))
(declare-const n166 Bool)
(assert (= n166 (and |power of d2 is up| |leader of d2 is d2| (not n139) (not n160) (not n161))))
(declare-const n167 Bool)
(assert (= n167 (and |power of d3 is up| |leader of d3 is d3| (not n142) (not n163) (not n164))))
(declare-const n168 Bool)
(assert (= n168 (and |leader of d1 is d2| (not n41) n166)))
(declare-const n169 Bool)
(assert (= n169 (and |leader of d1 is d3| (not n40) n167)))
(declare-const n170 Bool)
(assert (= n170 (and |leader of d2 is d1| (not n41) n165)))
(declare-const n171 Bool)
(assert (= n171 (and |leader of d2 is d3| (not n39) n167)))
(declare-const n172 Bool)
(assert (= n172 (and |leader of d3 is d1| (not n40) n165)))
(declare-const n173 Bool)
(assert (= n173 (and |leader of d3 is d2| (not n39) n166)))
(declare-const n174 Bool)
(assert (= n174 (and (or (not |number of d2 is 1|) (not |number of d1 is 1'|)) (or
    (not |number of d2 is 2|) (not |number of d1 is 2'|)) (or (not |number of d2 is 3|)
    (not |number of d1 is 3'|)))))
(declare-const n175 Bool)
(assert (= n175 (and (not n45) (or (not |leader of d2 is d1|) n41) (or (not |leader of d2 is d3|)
    n39))))
(declare-const n176 Bool)
(assert (= n176 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n44)
    (not n148) (not n149) (not n159))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n101 n102 n103 n165 n168 n169 n175))))
(declare-const n177 Bool)
(assert (= n177 (and (not n41) (not n174) (not n176))))
(declare-const n178 Bool)
(assert (= n178 (and (or (not |number of d3 is 1|) (not |number of d1 is 1'|)) (or
    (not |number of d3 is 2|) (not |number of d1 is 2'|)) (or (not |number of d3 is 3|)
    (not |number of d1 is 3'|)))))
(declare-const n179 Bool)
(assert (= n179 (and (not n47) (or (not |leader of d3 is d1|) n40) (or (not |leader of d3 is d2|)
    n39))))
(declare-const n180 Bool)
(assert (= n180 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n46)
    (not n155) (not n156) (not n162))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n108 n109 n110 n165 n168 n169 n179))))
(declare-const n181 Bool)
(assert (= n181 (and (not n40) (not n178) (not n180))))
(declare-const n182 Bool)
(assert (= n182 (and |power of d1 is up| (not |leader of d1 is none|) (or n43 n134 n135) (not n165)
    (not n168) (not n169))))
(declare-const n183 Bool)
(assert (= n183 (and (not n177) (not n181) n182)))
(declare-const n184 Bool)
(assert (= n184 (and (not n43) (or (not |leader of d1 is d2|) n41) (or (not |leader of d1 is d3|)
    n40))))
(declare-const n185 Bool)
(assert (= n185 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n42)
    (not n145) (not n147) (not n150))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n101 n102 n103 n166 n170 n171 n184))))
(declare-const n186 Bool)
(assert (= n186 (and (not n41) (not n174) (not n185))))
(declare-const n187 Bool)
(assert (= n187 (and (not n119) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n120 n121 n122 n166 n170 n171 n179))))
(declare-const n188 Bool)
(assert (= n188 (and (not n39) (not n118) (not n187))))
(declare-const n189 Bool)
(assert (= n189 (and |power of d2 is up| (not |leader of d2 is none|) (or n45 n137 n138) (not n166)
    (not n170) (not n171))))
(declare-const n190 Bool)
(assert (= n190 (and (not n186) (not n188) n189)))
(declare-const n191 Bool)
(assert (= n191 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n42)
    (not n153) (not n154) (not n157))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n108 n109 n110 n167 n172 n173 n184))))
(declare-const n192 Bool)
(assert (= n192 (and (not n40) (not n178) (not n191))))
(declare-const n193 Bool)
(assert (= n193 (and (not n129) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n120 n121 n122 n167 n172 n173 n175))))
(declare-const n194 Bool)
(assert (= n194 (and (not n39) (not n118) (not n193))))
(declare-const n195 Bool)
(assert (= n195 (and |power of d3 is up| (not |leader of d3 is none|) (or n47 n140 n141) (not n167)
    (not n172) (not n173))))
(declare-const n196 Bool)
(assert (= n196 (and (not n192) (not n194) n195)))
(declare-const n197 Bool)
(assert (= n197 (and |power of d1 is up| (not n136) (not n151) (not n158) (not n177) (not n181)
    (not n182))))
(declare-const n198 Bool)
(assert (= n198 (and |power of d1 is up| (not n41) (not n139) (not n160) (not n161) (not n181)
    (not n182) (or n174 n176))))
(declare-const n199 Bool)
(assert (= n199 (and |power of d1 is up| (not n40) (not n142) (not n163) (not n164) (not n177)
    (not n182) (or n178 n180))))
(declare-const n200 Bool)
(assert (= n200 (and |power of d2 is up| (not n41) (not n136) (not n151) (not n158) (not n188)
    (not n189) (or n174 n185))))
(declare-const n201 Bool)
(assert (= n201 (and |power of d2 is up| (not n139) (not n160) (not n161) (not n186) (not n188)
    (not n189))))
(declare-const n202 Bool)
(assert (= n202 (and |power of d2 is up| (not n39) (not n142) (not n163) (not n164) (not n186)
    (not n189) (or n118 n187))))
(declare-const n203 Bool)
(assert (= n203 (and |power of d3 is up| (not n40) (not n136) (not n151) (not n158) (not n194)
    (not n195) (or n178 n191))))
(declare-const n204 Bool)
(assert (= n204 (and |power of d3 is up| (not n39) (not n139) (not n160) (not n161) (not n192)
    (not n195) (or n118 n193))))
(declare-const n205 Bool)
(assert (= n205 (and |power of d3 is up| (not n142) (not n163) (not n164) (not n192) (not n194)
    (not n195))))
(declare-const n206 Bool)
(assert (= n206 (and |power of d1 is starting| (not n105) (not n112))))
(declare-const n207 Bool)
(assert (= n207 (and |power of d1 is up| (not n50) (not n67) (not n76) (not n105) (not n112)
    (not n113))))
(declare-const n208 Bool)
(assert (= n208 (and |power of d1 is up| (not n30) (not n53) (not n78) (not n85) (not n112)
    (not n113) (or n99 n104))))
(declare-const n209 Bool)
(assert (= n209 (and |power of d1 is up| (not n29) (not n56) (not n87) (not n89) (not n105)
    (not n113) (or n106 n111))))
(declare-const n210 Bool)
(assert (= n210 (and |power of d2 is up| (not n30) (not n50) (not n67) (not n76) (not n124)
    (not n125) (or n99 n116))))
(declare-const n211 Bool)
(assert (= n211 (and |power of d2 is up| (not n53) (not n78) (not n85) (not n117) (not n124)
    (not n125))))
(declare-const n212 Bool)
(assert (= n212 (and |power of d2 is up| (not n28) (not n56) (not n87) (not n89) (not n117)
    (not n125) (or n118 n123))))
(declare-const n213 Bool)
(assert (= n213 (and |power of d3 is up| (not n29) (not n50) (not n67) (not n76) (not n131)
    (not n132) (or n106 n127))))
(declare-const n214 Bool)
(assert (= n214 (and |power of d3 is up| (not n28) (not n53) (not n78) (not n85) (not n128)
    (not n132) (or n118 n130))))
(declare-const n215 Bool)
(assert (= n215 (and |power of d3 is up| (not n56) (not n87) (not n89) (not n128) (not n131)
    (not n132))))
(declare-const n216 Bool)
(assert (= n216 (and (or (not |number of d1 is 1|) (not |number of d1 is 1'|)) (or
    (not |number of d1 is 2|) (not |number of d1 is 2'|)) (or (not |number of d1 is 3|)
    (not |number of d1 is 3'|)))))
(declare-const n217 Bool)
(assert (= n217 (and (or (not |priority of d1 is 1|) (not |priority of d1 is 1'|)) (or
    (not |priority of d1 is 2|) (not |priority of d1 is 2'|)) (or (not |priority of d1 is 3|)
    (not |priority of d1 is 3'|)))))
(declare-const n218 Bool)
(assert (= n218 (xor |d1/2 enabled| |d1/2 enabled'|)))
(declare-const n219 Bool)
(assert (= n219 (and (or (not |side of d1/2 is none|) (not |side of d1/2 is none'|)) (or
    (not |side of d1/2 is east|) (not |side of d1/2 is east'|)) (or (not |side of d1/2 is west|)
    (not |side of d1/2 is west'|)))))
(declare-const n220 Bool)
(assert (= n220 (and (or (not |operational side of d1/2 is none|)
    (not |operational side of d1/2 is none'|)) (or (not |operational side of d1/2 is east|)
    (not |operational side of d1/2 is east'|)) (or (not |operational side of d1/2 is west|)
    (not |operational side of d1/2 is west'|)))))
(declare-const n221 Bool)
(assert (= n221 (xor |d1/3 enabled| |d1/3 enabled'|)))
(declare-const n222 Bool)
(assert (= n222 (and (or (not |side of d1/3 is none|) (not |side of d1/3 is none'|)) (or
    (not |side of d1/3 is east|) (not |side of d1/3 is east'|)) (or (not |side of d1/3 is west|)
    (not |side of d1/3 is west'|)))))
(declare-const n223 Bool)
(assert (= n223 (and (or (not |operational side of d1/3 is none|)
    (not |operational side of d1/3 is none'|)) (or (not |operational side of d1/3 is east|)
    (not |operational side of d1/3 is east'|)) (or (not |operational side of d1/3 is west|)
    (not |operational side of d1/3 is west'|)))))
(declare-const n224 Bool)
(assert (= n224 (and (not n216) (not n217) (not n218) (not n219) (not n220) (not n221) (not n222)
    (not n223))))
(declare-const n225 Bool)
(assert (= n225 (and (or n114 n206 (and |power of d1 is off| (not n105) (not n112) (not n113)) n224)
    (or (and |power of d1 is off| (not n105) (not n112) (not n113) (not n177) (not n181) (not n182))
    (and (or n183 (and |power of d1 is starting| (not n177) (not n181))) (or n114 n206)) (and
    |power of d1 is up| (not n105) (not n112) (not n113) (not n177) (not n181) (not n182)) (and
    (not n114) (not n183) (or |power of d1 is held| n177 n181) (or |power of d1 is held| n105 n112)))
    (or (and (ite |power of d1 is up| (and (not n197) (not n198) (not n199)) |leader of d1 is none|)
    (ite |power of d1 is up| (and (not n207) (not n208) (not n209)) |leader of d1 is none|)) (and
    (ite |power of d1 is up| n197 |leader of d1 is d1|) (ite |power of d1 is up| n207
    |leader of d1 is d1|)) (and (ite |power of d1 is up| n198 |leader of d1 is d2|) (ite
    |power of d1 is up| n208 |leader of d1 is d2|)) (and (ite |power of d1 is up| n199
    |leader of d1 is d3|) (ite |power of d1 is up| n209 |leader of d1 is d3|))) (or (and
    |power of d2 is off| (not n117) (not n124) (not n125) (not n186) (not n188) (not n189)) (and (or
    n190 (and |power of d2 is starting| (not n186) (not n188))) (or n126 (and
    |power of d2 is starting| (not n117) (not n124)))) (and |power of d2 is up| (not n117)
    (not n124) (not n125) (not n186) (not n188) (not n189)) (and (not n126) (not n190) (or
    |power of d2 is held| n186 n188) (or |power of d2 is held| n117 n124))) (or (and (ite
    |power of d2 is up| (and (not n200) (not n201) (not n202)) |leader of d2 is none|) (ite
    |power of d2 is up| (and (not n210) (not n211) (not n212)) |leader of d2 is none|)) (and (ite
    |power of d2 is up| n200 |leader of d2 is d1|) (ite |power of d2 is up| n210
    |leader of d2 is d1|)) (and (ite |power of d2 is up| n201 |leader of d2 is d2|) (ite
    |power of d2 is up| n211 |leader of d2 is d2|)) (and (ite |power of d2 is up| n202
    |leader of d2 is d3|) (ite |power of d2 is up| n212 |leader of d2 is d3|))) (or (and
    |power of d3 is off| (not n128) (not n131) (not n132) (not n192) (not n194) (not n195)) (and (or
    n196 (and |power of d3 is starting| (not n192) (not n194))) (or n133 (and
    |power of d3 is starting| (not n128) (not n131)))) (and |power of d3 is up| (not n128)
    (not n131) (not n132) (not n192) (not n194) (not n195)) (and (not n133) (not n196) (or
    |power of d3 is held| n192 n194) (or |power of d3 is held| n128 n131))) (or (and (ite
    |power of d3 is up| (and (not n203) (not n204) (not n205)) |leader of d3 is none|) (ite
    |power of d3 is up| (and (not n213) (not n214) (not n215)) |leader of d3 is none|)) (and (ite
    |power of d3 is up| n203 |leader of d3 is d1|) (ite |power of d3 is up| n213
    |leader of d3 is d1|)) (and (ite |power of d3 is up| n204 |leader of d3 is d2|) (ite
    |power of d3 is up| n214 |leader of d3 is d2|)) (and (ite |power of d3 is up| n205
    |leader of d3 is d3|) (ite |power of d3 is up| n215 |leader of d3 is d3|))) (or (and (or
    (not |d1 senior to d2|) n183 n190) (or (not |d1 senior to d2|) n114 n126)) (and
    |d1 senior to d2| (not n114) (not n126) (not n183) (not n190))) (or (and (or
    (not |d1 senior to d3|) n183 n196) (or (not |d1 senior to d3|) n114 n133)) (and
    |d1 senior to d3| (not n114) (not n133) (not n183) (not n196))) (or (and (or
    (not |d2 senior to d1|) n183 n190) (or (not |d2 senior to d1|) n114 n126)) (and
    |d2 senior to d1| (not n114) (not n126) (not n183) (not n190))) (or (and (or
    (not |d2 senior to d3|) n190 n196) (or (not |d2 senior to d3|) n126 n133)) (and
    |d2 senior to d3| (not n126) (not n133) (not n190) (not n196))) (or (and (or
    (not |d3 senior to d1|) n183 n196) (or (not |d3 senior to d1|) n114 n133)) (and
    |d3 senior to d1| (not n114) (not n133) (not n183) (not n196))) (or (and (or
    (not |d3 senior to d2|) n190 n196) (or (not |d3 senior to d2|) n126 n133)) (and
    |d3 senior to d2| (not n126) (not n133) (not n190) (not n196))) (= (and (not n105) (not n112))
    (and (not n177) (not n181))) (= n114 n183) (= (and (not n117) (not n124)) (and (not n186)
    (not n188))) (= n126 n190) (= (and (not n128) (not n131)) (and (not n192) (not n194))) (= n133
    n196) (= n22 n35) (= n25 n36) (= n26 n37) (= n27 n38))))
(declare-const n226 Bool)
(assert (= n226 (and (not |power of d1 is up|) (not |power of d1 is held|) |side of d1/2 is east|
    |side of d1/2 is east'|)))
(declare-const n227 Bool)
(assert (= n227 (and (not |power of d1 is up|) (not |power of d1 is held|)
    |operational side of d1/2 is east| |operational side of d1/2 is east'|)))
(declare-const n228 Bool)
(assert (= n228 (and (not n12) (or |power of d1 is up| |power of d1 is held| n41) (or
    |power of d1 is up| |power of d1 is held| n40))))
(declare-const n229 Bool)
(assert (= n229 (and (not n12) (or |power of d1 is up| |power of d1 is held| n30) (or
    |power of d1 is up| |power of d1 is held| n29))))
(declare-const n230 Bool)
(assert (= n230 (and (or (and (ite n228 (ite n41 |operational side of d2/1 is none|
    |side of d2/1 is none|) |operational side of d2/1 is none|) (ite n229 (ite n30
    |operational side of d2/1 is none| |side of d2/1 is none|) |operational side of d2/1 is none|))
    (and (ite n228 (ite n41 |operational side of d2/1 is east| |side of d2/1 is east|)
    |operational side of d2/1 is east|) (ite n229 (ite n30 |operational side of d2/1 is east|
    |side of d2/1 is east|) |operational side of d2/1 is east|)) (and (ite n228 (ite n41
    |operational side of d2/1 is west| |side of d2/1 is west|) |operational side of d2/1 is west|)
    (ite n229 (ite n30 |operational side of d2/1 is west| |side of d2/1 is west|)
    |operational side of d2/1 is west|))) (or (and (ite n228 (ite n41
    |operational side of d2/3 is none| |side of d2/3 is none|) |operational side of d2/3 is none|)
    (ite n229 (ite n30 |operational side of d2/3 is none| |side of d2/3 is none|)
    |operational side of d2/3 is none|)) (and (ite n228 (ite n41 |operational side of d2/3 is east|
    |side of d2/3 is east|) |operational side of d2/3 is east|) (ite n229 (ite n30
    |operational side of d2/3 is east| |side of d2/3 is east|) |operational side of d2/3 is east|))
    (and (ite n228 (ite n41 |operational side of d2/3 is west| |side of d2/3 is west|)
    |operational side of d2/3 is west|) (ite n229 (ite n30 |operational side of d2/3 is west|
    |side of d2/3 is west|) |operational side of d2/3 is west|))) (or (and (ite n228 (ite n40
    |operational side of d3/1 is none| |side of d3/1 is none|) |operational side of d3/1 is none|)
    (ite n229 (ite n29 |operational side of d3/1 is none| |side of d3/1 is none|)
    |operational side of d3/1 is none|)) (and (ite n228 (ite n40 |operational side of d3/1 is east|
    |side of d3/1 is east|) |operational side of d3/1 is east|) (ite n229 (ite n29
    |operational side of d3/1 is east| |side of d3/1 is east|) |operational side of d3/1 is east|))
    (and (ite n228 (ite n40 |operational side of d3/1 is west| |side of d3/1 is west|)
    |operational side of d3/1 is west|) (ite n229 (ite n29 |operational side of d3/1 is west|
    |side of d3/1 is west|) |operational side of d3/1 is west|))) (or (and (ite n228 (ite n40
    |operational side of d3/2 is none| |side of d3/2 is none|) |operational side of d3/2 is none|)
    (ite n229 (ite n29 |operational side of d3/2 is none| |side of d3/2 is none|)
    |operational side of d3/2 is none|)) (and (ite n228 (ite n40 |operational side of d3/2 is east|
    |side of d3/2 is east|) |operational side of d3/2 is east|) (ite n229 (ite n29
    |operational side of d3/2 is east| |side of d3/2 is east|) |operational side of d3/2 is east|))
    (and (ite n228 (ite n40 |operational side of d3/2 is west| |side of d3/2 is west|)
    |operational side of d3/2 is west|) (ite n229 (ite n29 |operational side of d3/2 is west|
    |side of d3/2 is west|) |operational side of d3/2 is west|))) (or |power of d1 is off|
    |power of d1 is starting| (and (not n216) (not n217) (not n218) (not n219) (not n221) (not n222)
    (or (and (ite n228 |side of d1/2 is none'| |operational side of d1/2 is none'|) (ite n229
    |side of d1/2 is none| |operational side of d1/2 is none|)) (and (ite n228
    |side of d1/2 is east'| |operational side of d1/2 is east'|) (ite n229 |side of d1/2 is east|
    |operational side of d1/2 is east|)) (and (ite n228 |side of d1/2 is west'|
    |operational side of d1/2 is west'|) (ite n229 |side of d1/2 is west|
    |operational side of d1/2 is west|))) (or (and (ite n228 |side of d1/3 is none'|
    |operational side of d1/3 is none'|) (ite n229 |side of d1/3 is none|
    |operational side of d1/3 is none|)) (and (ite n228 |side of d1/3 is east'|
    |operational side of d1/3 is east'|) (ite n229 |side of d1/3 is east|
    |operational side of d1/3 is east|)) (and (ite n228 |side of d1/3 is west'|
    |operational side of d1/3 is west'|) (ite n229 |side of d1/3 is west|
    |operational side of d1/3 is west|))))))))
(declare-const n231 Bool)
(assert (= n231 (and (or |power of d1 is off| |power of d1 is starting| n224) (or (and (ite n228
    |priority of d1 is 1'| |startup priority of d1 is 1|) (ite n229 |priority of d1 is 1|
    |startup priority of d1 is 1|)) (and (ite n228 |priority of d1 is 2'|
    |startup priority of d1 is 2|) (ite n229 |priority of d1 is 2| |startup priority of d1 is 2|))
    (and (ite n228 |priority of d1 is 3'| |startup priority of d1 is 3|) (ite n229
    |priority of d1 is 3| |startup priority of d1 is 3|))) (or (and (ite n228 (ite n41
    |startup priority of d2 is 1| |priority of d2 is 1|) |startup priority of d2 is 1|) (ite n229
    (ite n30 |startup priority of d2 is 1| |priority of d2 is 1|) |startup priority of d2 is 1|))
    (and (ite n228 (ite n41 |startup priority of d2 is 2| |priority of d2 is 2|)
    |startup priority of d2 is 2|) (ite n229 (ite n30 |startup priority of d2 is 2|
    |priority of d2 is 2|) |startup priority of d2 is 2|)) (and (ite n228 (ite n41
    |startup priority of d2 is 3| |priority of d2 is 3|) |startup priority of d2 is 3|) (ite n229
    (ite n30 |startup priority of d2 is 3| |priority of d2 is 3|) |startup priority of d2 is 3|)))
    (or (and (ite n228 (ite n40 |startup priority of d3 is 1| |priority of d3 is 1|)
    |startup priority of d3 is 1|) (ite n229 (ite n29 |startup priority of d3 is 1|
    |priority of d3 is 1|) |startup priority of d3 is 1|)) (and (ite n228 (ite n40
    |startup priority of d3 is 2| |priority of d3 is 2|) |startup priority of d3 is 2|) (ite n229
    (ite n29 |startup priority of d3 is 2| |priority of d3 is 2|) |startup priority of d3 is 2|))
    (and (ite n228 (ite n40 |startup priority of d3 is 3| |priority of d3 is 3|)
    |startup priority of d3 is 3|) (ite n229 (ite n29 |startup priority of d3 is 3|
    |priority of d3 is 3|) |startup priority of d3 is 3|))) (= (ite n228 |d1/2 enabled'|
    |d1/2 enabled in startup|) (ite n229 |d1/2 enabled| |d1/2 enabled in startup|)) (or (and (ite
    n228 |side of d1/2 is none'| |startup side of d1/2 is none|) (ite n229 |side of d1/2 is none|
    |startup side of d1/2 is none|)) (and (ite n228 |side of d1/2 is east'|
    |startup side of d1/2 is east|) (ite n229 |side of d1/2 is east| |startup side of d1/2 is east|))
    (and (ite n228 |side of d1/2 is west'| |startup side of d1/2 is west|) (ite n229
    |side of d1/2 is west| |startup side of d1/2 is west|))) (= (ite n228 |d1/3 enabled'|
    |d1/3 enabled in startup|) (ite n229 |d1/3 enabled| |d1/3 enabled in startup|)) (or (and (ite
    n228 |side of d1/3 is none'| |startup side of d1/3 is none|) (ite n229 |side of d1/3 is none|
    |startup side of d1/3 is none|)) (and (ite n228 |side of d1/3 is east'|
    |startup side of d1/3 is east|) (ite n229 |side of d1/3 is east| |startup side of d1/3 is east|))
    (and (ite n228 |side of d1/3 is west'| |startup side of d1/3 is west|) (ite n229
    |side of d1/3 is west| |startup side of d1/3 is west|))) (= (ite n228 (ite n41
    |d2/1 enabled in startup| |d2/1 enabled|) |d2/1 enabled in startup|) (ite n229 (ite n30
    |d2/1 enabled in startup| |d2/1 enabled|) |d2/1 enabled in startup|)) (or (and (ite n228 (ite
    n41 |startup side of d2/1 is none| |side of d2/1 is none|) |startup side of d2/1 is none|) (ite
    n229 (ite n30 |startup side of d2/1 is none| |side of d2/1 is none|)
    |startup side of d2/1 is none|)) (and (ite n228 (ite n41 |startup side of d2/1 is east|
    |side of d2/1 is east|) |startup side of d2/1 is east|) (ite n229 (ite n30
    |startup side of d2/1 is east| |side of d2/1 is east|) |startup side of d2/1 is east|)) (and
    (ite n228 (ite n41 |startup side of d2/1 is west| |side of d2/1 is west|)
    |startup side of d2/1 is west|) (ite n229 (ite n30 |startup side of d2/1 is west|
    |side of d2/1 is west|) |startup side of d2/1 is west|))) (= (ite n228 (ite n41
    |d2/3 enabled in startup| |d2/3 enabled|) |d2/3 enabled in startup|) (ite n229 (ite n30
    |d2/3 enabled in startup| |d2/3 enabled|) |d2/3 enabled in startup|)) (or (and (ite n228 (ite
    n41 |startup side of d2/3 is none| |side of d2/3 is none|) |startup side of d2/3 is none|) (ite
    n229 (ite n30 |startup side of d2/3 is none| |side of d2/3 is none|)
    |startup side of d2/3 is none|)) (and (ite n228 (ite n41 |startup side of d2/3 is east|
    |side of d2/3 is east|) |startup side of d2/3 is east|) (ite n229 (ite n30
    |startup side of d2/3 is east| |side of d2/3 is east|) |startup side of d2/3 is east|)) (and
    (ite n228 (ite n41 |startup side of d2/3 is west| |side of d2/3 is west|)
    |startup side of d2/3 is west|) (ite n229 (ite n30 |startup side of d2/3 is west|
    |side of d2/3 is west|) |startup side of d2/3 is west|))) (= (ite n228 (ite n40
    |d3/1 enabled in startup| |d3/1 enabled|) |d3/1 enabled in startup|) (ite n229 (ite n29
    |d3/1 enabled in startup| |d3/1 enabled|) |d3/1 enabled in startup|)) (or (and (ite n228 (ite
    n40 |startup side of d3/1 is none| |side of d3/1 is none|) |startup side of d3/1 is none|) (ite
    n229 (ite n29 |startup side of d3/1 is none| |side of d3/1 is none|)
    |startup side of d3/1 is none|)) (and (ite n228 (ite n40 |startup side of d3/1 is east|
    |side of d3/1 is east|) |startup side of d3/1 is east|) (ite n229 (ite n29
    |startup side of d3/1 is east| |side of d3/1 is east|) |startup side of d3/1 is east|)) (and
    (ite n228 (ite n40 |startup side of d3/1 is west| |side of d3/1 is west|)
    |startup side of d3/1 is west|) (ite n229 (ite n29 |startup side of d3/1 is west|
    |side of d3/1 is west|) |startup side of d3/1 is west|))) (= (ite n228 (ite n40
    |d3/2 enabled in startup| |d3/2 enabled|) |d3/2 enabled in startup|) (ite n229 (ite n29
    |d3/2 enabled in startup| |d3/2 enabled|) |d3/2 enabled in startup|)) (or (and (ite n228 (ite
    n40 |startup side of d3/2 is none| |side of d3/2 is none|) |startup side of d3/2 is none|) (ite
    n229 (ite n29 |startup side of d3/2 is none| |side of d3/2 is none|)
    |startup side of d3/2 is none|)) (and (ite n228 (ite n40 |startup side of d3/2 is east|
    |side of d3/2 is east|) |startup side of d3/2 is east|) (ite n229 (ite n29
    |startup side of d3/2 is east| |side of d3/2 is east|) |startup side of d3/2 is east|)) (and
    (ite n228 (ite n40 |startup side of d3/2 is west| |side of d3/2 is west|)
    |startup side of d3/2 is west|) (ite n229 (ite n29 |startup side of d3/2 is west|
    |side of d3/2 is west|) |startup side of d3/2 is west|))))))
(declare-const n232 Bool)
(assert (= n232 (and n225 (or |power of d1 is off| (and (or (and (ite |power of d1 is off|
    |number of d1 is 1'| |next number of d1 is 1|) (ite |power of d1 is off| |number of d1 is 1|
    |next number of d1 is 1|)) (and (ite |power of d1 is off| |number of d1 is 2'|
    |next number of d1 is 2|) (ite |power of d1 is off| |number of d1 is 2| |next number of d1 is 2|))
    (and (ite |power of d1 is off| |number of d1 is 3'| |next number of d1 is 3|) (ite
    |power of d1 is off| |number of d1 is 3| |next number of d1 is 3|))) (or (and (ite
    |power of d1 is off| |priority of d1 is 1'| |startup priority of d1 is 1|) (ite
    |power of d1 is off| |priority of d1 is 1| |startup priority of d1 is 1|)) (and (ite
    |power of d1 is off| |priority of d1 is 2'| |startup priority of d1 is 2|) (ite
    |power of d1 is off| |priority of d1 is 2| |startup priority of d1 is 2|)) (and (ite
    |power of d1 is off| |priority of d1 is 3'| |startup priority of d1 is 3|) (ite
    |power of d1 is off| |priority of d1 is 3| |startup priority of d1 is 3|))) (= (ite
    |power of d1 is off| |d1/2 enabled'| |d1/2 enabled in startup|) (ite |power of d1 is off|
    |d1/2 enabled| |d1/2 enabled in startup|)) (or (and (ite |power of d1 is off|
    |side of d1/2 is none'| |startup side of d1/2 is none|) (ite |power of d1 is off|
    |side of d1/2 is none| |startup side of d1/2 is none|)) (and (ite |power of d1 is off|
    |side of d1/2 is east'| |startup side of d1/2 is east|) (ite |power of d1 is off|
    |side of d1/2 is east| |startup side of d1/2 is east|)) (and (ite |power of d1 is off|
    |side of d1/2 is west'| |startup side of d1/2 is west|) (ite |power of d1 is off|
    |side of d1/2 is west| |startup side of d1/2 is west|))) (or (and (ite |power of d1 is off|
    |operational side of d1/2 is none'| |startup side of d1/2 is none|) (ite |power of d1 is off|
    |operational side of d1/2 is none| |startup side of d1/2 is none|)) (and (ite
    |power of d1 is off| |operational side of d1/2 is east'| |startup side of d1/2 is east|) (ite
    |power of d1 is off| |operational side of d1/2 is east| |startup side of d1/2 is east|)) (and
    (ite |power of d1 is off| |operational side of d1/2 is west'| |startup side of d1/2 is west|)
    (ite |power of d1 is off| |operational side of d1/2 is west| |startup side of d1/2 is west|)))
    (= (ite |power of d1 is off| |d1/3 enabled'| |d1/3 enabled in startup|) (ite
    |power of d1 is off| |d1/3 enabled| |d1/3 enabled in startup|)) (or (and (ite
    |power of d1 is off| |side of d1/3 is none'| |startup side of d1/3 is none|) (ite
    |power of d1 is off| |side of d1/3 is none| |startup side of d1/3 is none|)) (and (ite
    |power of d1 is off| |side of d1/3 is east'| |startup side of d1/3 is east|) (ite
    |power of d1 is off| |side of d1/3 is east| |startup side of d1/3 is east|)) (and (ite
    |power of d1 is off| |side of d1/3 is west'| |startup side of d1/3 is west|) (ite
    |power of d1 is off| |side of d1/3 is west| |startup side of d1/3 is west|))) (or (and (ite
    |power of d1 is off| |operational side of d1/3 is none'| |startup side of d1/3 is none|) (ite
    |power of d1 is off| |operational side of d1/3 is none| |startup side of d1/3 is none|)) (and
    (ite |power of d1 is off| |operational side of d1/3 is east'| |startup side of d1/3 is east|)
    (ite |power of d1 is off| |operational side of d1/3 is east| |startup side of d1/3 is east|))
    (and (ite |power of d1 is off| |operational side of d1/3 is west'|
    |startup side of d1/3 is west|) (ite |power of d1 is off| |operational side of d1/3 is west|
    |startup side of d1/3 is west|))))) (or |power of d1 is off| |power of d1 is starting| |s1 done|
    |halted| n224) (or |s3 done| |halted| |power of d1 is off| |power of d1 is starting|
    |power of d1 is up| |power of d1 is held| n224) (or |power of d1 is off|
    |power of d1 is starting| |s4 done| |halted| (and (not n217) (not n218) (not n219) (not n220)
    (not n221) (not n222) (not n223) (or (and (or |power of d1 is up| |power of d1 is held|
    |number of d1 is 1'|) (or |power of d1 is up| |power of d1 is held| |number of d1 is 1|)) (and
    (not |power of d1 is up|) (not |power of d1 is held|) |number of d1 is 2| |number of d1 is 2'|)
    (and (not |power of d1 is up|) (not |power of d1 is held|) |number of d1 is 3|
    |number of d1 is 3'|)))) (or |power of d1 is off| |power of d1 is starting| |s5 done| |halted|
    (and (not n216) (not n218) (not n219) (not n220) (not n221) (not n222) (not n223) (or (and (or
    |power of d1 is up| |power of d1 is held| |priority of d1 is 1'|) (or |power of d1 is up|
    |power of d1 is held| |priority of d1 is 1|)) (and (not |power of d1 is up|)
    (not |power of d1 is held|) |priority of d1 is 2| |priority of d1 is 2'|) (and
    (not |power of d1 is up|) (not |power of d1 is held|) |priority of d1 is 3|
    |priority of d1 is 3'|)))) (or |power of d1 is off| |power of d1 is starting| |s6 done| |halted|
    (and (not n216) (not n217) (not n219) (not n220) (not n221) (not n222) (not n223) (or (and
    (not |power of d1 is up|) (not |power of d1 is held|) (not |d1/2 enabled|) (not |d1/2 enabled'|))
    (and (or |power of d1 is up| |power of d1 is held| |d1/2 enabled'|) (or |power of d1 is up|
    |power of d1 is held| |d1/2 enabled|))))) (or |power of d1 is off| |power of d1 is starting|
    |s7 done| |halted| (and (not n216) (not n217) (not n219) (not n220) (not n221) (not n222)
    (not n223) (or (and (or |power of d1 is up| |power of d1 is held| (not |d1/2 enabled'|)) (or
    |power of d1 is up| |power of d1 is held| (not |d1/2 enabled|))) (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d1/2 enabled| |d1/2 enabled'|)))) (or |power of d1 is off|
    |power of d1 is starting| |s8 done| |halted| (and (not n216) (not n217) (not n218) (not n221)
    (not n222) (not n223) (or (and (not |power of d1 is up|) (not |power of d1 is held|)
    |side of d1/2 is none| |side of d1/2 is none'|) n226 (and (or |power of d1 is up|
    |power of d1 is held| |side of d1/2 is west'|) (or |power of d1 is up| |power of d1 is held|
    |side of d1/2 is west|))) (or (and (not |power of d1 is up|) (not |power of d1 is held|)
    |operational side of d1/2 is none| |operational side of d1/2 is none'|) n227 (and (or
    |power of d1 is up| |power of d1 is held| |operational side of d1/2 is west'|) (or
    |power of d1 is up| |power of d1 is held| |operational side of d1/2 is west|))))) (or
    |power of d1 is off| |power of d1 is starting| |s9 done| |halted| (and (not n216) (not n217)
    (not n218) (not n221) (not n222) (not n223) (or n226 (and (or |power of d1 is up|
    |power of d1 is held| |side of d1/2 is none'|) (or |power of d1 is up| |power of d1 is held|
    |side of d1/2 is none|)) (and (not |power of d1 is up|) (not |power of d1 is held|)
    |side of d1/2 is west| |side of d1/2 is west'|)) (or n227 (and (or |power of d1 is up|
    |power of d1 is held| |operational side of d1/2 is none'|) (or |power of d1 is up|
    |power of d1 is held| |operational side of d1/2 is none|)) (and (not |power of d1 is up|)
    (not |power of d1 is held|) |operational side of d1/2 is west|
    |operational side of d1/2 is west'|)))) (or |s10 done| |halted| n230) (= n228 n229) (or
    |s11 done| |halted| n231) (or |power of d1 is off| |power of d1 is starting| |s12 done| |halted|
    n224) (or |power of d1 is off| |power of d1 is starting| |s13 done| |halted| n224) (or
    |power of d1 is off| |power of d1 is starting| |s14 done| |halted| n224) (or
    |power of d1 is off| |power of d1 is starting| |s15 done| |halted| n224) (or
    |power of d1 is off| |power of d1 is starting| (not |power of d2 is starting|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |power of d3 is starting|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |d1--d2 plugged|) |d1--d2 broken|
    (not |cable breaks left is 1|) n224) (or |power of d1 is off| |power of d1 is starting|
    (not |d1--d3 plugged|) |d1--d3 broken| (not |cable breaks left is 1|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |d2--d3 plugged|) |d2--d3 broken|
    (not |cable breaks left is 1|) n224) (or |power of d1 is off| |power of d1 is starting|
    (not |rival plugged|) |rival broken| (not |cable breaks left is 1|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |d1--d2 broken|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |d1--d3 broken|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |d2--d3 broken|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |rival broken|) n224) (or
    |power of d1 is off| |power of d1 is starting| (not |power of d2 is up|)
    (not |crashes left is 1|) n224) (or |power of d1 is off| |power of d1 is starting|
    (not |power of d3 is up|) (not |crashes left is 1|) n224) (or |power of d1 is off|
    |power of d1 is starting| |s1 done| (not |omissions left is 1|) |halted| n224) (or
    |power of d1 is off| |power of d1 is starting| |s2 done| (not |omissions left is 1|) |halted|
    n224) (or |power of d1 is off| |power of d1 is starting| |s3 done| (not |omissions left is 1|)
    |halted| n224) (or |power of d1 is off| |power of d1 is starting| |s4 done|
    (not |omissions left is 1|) |halted| n224) (or |power of d1 is off| |power of d1 is starting|
    |s5 done| (not |omissions left is 1|) |halted| n224) (or |power of d1 is off|
    |power of d1 is starting| |s6 done| (not |omissions left is 1|) |halted| n224) (or
    |power of d1 is off| |power of d1 is starting| |s7 done| (not |omissions left is 1|) |halted|
    n224) (or |power of d1 is off| |power of d1 is starting| |s8 done| (not |omissions left is 1|)
    |halted| n224) (or |power of d1 is off| |power of d1 is starting| |s9 done|
    (not |omissions left is 1|) |halted| n224) (or |power of d1 is off| |power of d1 is starting|
    |s10 done| (not |omissions left is 1|) |halted| n224) (or |power of d1 is off|
    |power of d1 is starting| |s11 done| (not |omissions left is 1|) |halted| n224) (or
    |power of d1 is off| |power of d1 is starting| |s12 done| (not |omissions left is 1|) |halted|
    n224) (or |power of d1 is off| |power of d1 is starting| |s13 done| (not |omissions left is 1|)
    |halted| n224) (or |power of d1 is off| |power of d1 is starting|
    (not |power of d2 is starting|) (not |late starts left is 1|) n224) (or |power of d1 is off|
    |power of d1 is starting| (not |power of d3 is starting|) (not |late starts left is 1|) n224))))
; Every variable has one value, and the laws of all states apply.
(assert (and n6 (or |power of d1 is up| |leader of d1 is none|) (or |power of d2 is up|
    |leader of d2 is none|) (or |power of d3 is up| |leader of d3 is none|) (or
    (not |d1 senior to d2|) (and (not |d2 senior to d1|) (not n12) (not n13))) (or
    (not |d1 senior to d2|) |d1 senior to d3| |d3 senior to d2| n14) (or (not |d1 senior to d3|)
    (and (not |d3 senior to d1|) (not n12) (not n14))) (or |d1 senior to d2| (not |d1 senior to d3|)
    |d2 senior to d3| n13) (or (not |d2 senior to d1|) (and (not |d1 senior to d2|) (not n12)
    (not n13))) (or (not |d2 senior to d1|) |d2 senior to d3| |d3 senior to d1| n14) (or
    (not |d2 senior to d3|) (and (not |d3 senior to d2|) (not n13) (not n14))) (or |d1 senior to d3|
    |d2 senior to d1| (not |d2 senior to d3|) n12) (or (not |d3 senior to d1|) (and
    (not |d1 senior to d3|) (not n12) (not n14))) (or |d2 senior to d1| (not |d3 senior to d1|)
    |d3 senior to d2| n13) (or (not |d3 senior to d2|) (and (not |d2 senior to d3|) (not n13)
    (not n14))) (or |d1 senior to d2| |d3 senior to d1| (not |d3 senior to d2|) n12) (or
    (not |d1--d2 plugged|) (not |rival plugged|)) (or (not |d1--d3 plugged|) (not |rival plugged|))))
; In the other state the priority, the number, and `enabled` and the sides of the ports of d1 are
; those marked '; all else is the same.
(assert n11)
; d1 is off or starting.
(assert (not n1))
; And this is false: the same links have formed; a pass holds and restarts the same devices; the
; same events may happen, and the same steps are refused; and after a pass, any event or a cold
; start the two states differ in nothing but the same values of d1, and not even there when it is
; up.
(assert (not n232))
(check-sat)
(exit)
