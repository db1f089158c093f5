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
(assert (= n15 (and |number of d1 is 1| |number of d1 is 1'|)))
(declare-const n16 Bool)
(assert (= n16 (and |number of d1 is 2| |number of d1 is 2'|)))
(declare-const n17 Bool)
(assert (= n17 (and |number of d1 is 3| |number of d1 is 3'|)))
(declare-const n18 Bool)
(assert (= n18 (and (not n15) (not n16) (not n17))))
(declare-const n19 Bool)
(assert (= n19 (and |d1/2 enabled| |d2/1 enabled| |d1--d2 plugged| (not |d1--d2 broken|) (not n12)
    (not n13))))
(declare-const n20 Bool)
(assert (= n20 (and |d1/3 enabled| |d3/1 enabled| |d1--d3 plugged| (not |d1--d3 broken|) (not n12)
    (not n14))))
(declare-const n21 Bool)
(assert (= n21 (and |d2/3 enabled| |d3/2 enabled| |d2--d3 plugged| (not |d2--d3 broken|) (not n13)
    (not n14))))
(declare-const n22 Bool)
(assert (= n22 (and |d1/2 enabled| |d3/1 enabled| |rival plugged| (not |rival broken|) (not n12)
    (not n14))))
(declare-const n23 Bool)
(assert (= n23 (and (or (not |operational side of d2/1 is none|)
    (not |operational side of d2/3 is none|)) (or (not |operational side of d2/1 is east|)
    (not |operational side of d2/3 is east|)) (or (not |operational side of d2/1 is west|)
    (not |operational side of d2/3 is west|)))))
(declare-const n24 Bool)
(assert (= n24 (and n21 (not n23))))
(declare-const n25 Bool)
(assert (= n25 (and (or (not |operational side of d1/2 is none|)
    (not |operational side of d1/3 is none|)) (or (not |operational side of d1/2 is east|)
    (not |operational side of d1/3 is east|)) (or (not |operational side of d1/2 is west|)
    (not |operational side of d1/3 is west|)))))
(declare-const n26 Bool)
(assert (= n26 (and |power of d1 is up| |power of d2 is up| (not |operational side of d1/2 is none|)
    (not |operational side of d2/1 is none|) n19 (not n24) (or (not n20) n25))))
(declare-const n27 Bool)
(assert (= n27 (and (or (not |operational side of d3/1 is none|)
    (not |operational side of d3/2 is none|)) (or (not |operational side of d3/1 is east|)
    (not |operational side of d3/2 is east|)) (or (not |operational side of d3/1 is west|)
    (not |operational side of d3/2 is west|)))))
(declare-const n28 Bool)
(assert (= n28 (and n21 (not n27))))
(declare-const n29 Bool)
(assert (= n29 (and |power of d1 is up| |power of d3 is up| (not |operational side of d1/3 is none|)
    (not |operational side of d3/1 is none|) n20 (not n28) (or (not n19) n25))))
(declare-const n30 Bool)
(assert (= n30 (and |power of d2 is up| |power of d3 is up| (not |operational side of d2/3 is none|)
    (not |operational side of d3/2 is none|) n21 (or (not n20) n27) (or (not n22) n27) (or (not n19)
    n23))))
(declare-const n31 Bool)
(assert (= n31 (and |power of d1 is up| |power of d3 is up| (not |operational side of d1/2 is none|)
    (not |operational side of d3/1 is none|) n22 (not n28))))
(declare-const n32 Bool)
(assert (= n32 (and (not n30) (or (not n26) (and (not n29) (not n31))))))
(declare-const n33 Bool)
(assert (= n33 (and (not n29) (not n31) (or (not n26) n32))))
(declare-const n34 Bool)
(assert (= n34 (and (not n26) (or n32 n33))))
(declare-const n35 Bool)
(assert (= n35 (and |d2/1 enabled| |d1--d2 plugged| (not |d1--d2 broken|) |d1/2 enabled'| (not n12)
    (not n13))))
(declare-const n36 Bool)
(assert (= n36 (and |d3/1 enabled| |d1--d3 plugged| (not |d1--d3 broken|) |d1/3 enabled'| (not n12)
    (not n14))))
(declare-const n37 Bool)
(assert (= n37 (and |d3/1 enabled| |rival plugged| (not |rival broken|) |d1/2 enabled'| (not n12)
    (not n14))))
(declare-const n38 Bool)
(assert (= n38 (and (or (not |operational side of d1/2 is none'|)
    (not |operational side of d1/3 is none'|)) (or (not |operational side of d1/2 is east'|)
    (not |operational side of d1/3 is east'|)) (or (not |operational side of d1/2 is west'|)
    (not |operational side of d1/3 is west'|)))))
(declare-const n39 Bool)
(assert (= n39 (and |power of d1 is up| |power of d2 is up| (not |operational side of d2/1 is none|)
    (not |operational side of d1/2 is none'|) (not n24) n35 (or (not n36) n38))))
(declare-const n40 Bool)
(assert (= n40 (and |power of d1 is up| |power of d3 is up| (not |operational side of d3/1 is none|)
    (not |operational side of d1/3 is none'|) (not n28) n36 (or (not n35) n38))))
(declare-const n41 Bool)
(assert (= n41 (and |power of d2 is up| |power of d3 is up| (not |operational side of d2/3 is none|)
    (not |operational side of d3/2 is none|) n21 (or n27 (not n36)) (or n27 (not n37)) (or n23
    (not n35)))))
(declare-const n42 Bool)
(assert (= n42 (and |power of d1 is up| |power of d3 is up| (not |operational side of d3/1 is none|)
    (not |operational side of d1/2 is none'|) (not n28) n37)))
(declare-const n43 Bool)
(assert (= n43 (and (not n41) (or (not n39) (and (not n40) (not n42))))))
(declare-const n44 Bool)
(assert (= n44 (and (not n40) (not n42) (or (not n39) n43))))
(declare-const n45 Bool)
(assert (= n45 (and (not n39) (or n43 n44))))
(declare-const n46 Bool)
(assert (= n46 (and |power of d1 is up| (not |leader of d1 is none|))))
(declare-const n47 Bool)
(assert (= n47 (and |power of d1 is up| |leader of d1 is d1|)))
(declare-const n48 Bool)
(assert (= n48 (and |power of d2 is up| (not |leader of d2 is none|))))
(declare-const n49 Bool)
(assert (= n49 (and |power of d2 is up| |leader of d2 is d2|)))
(declare-const n50 Bool)
(assert (= n50 (and |power of d3 is up| (not |leader of d3 is none|))))
(declare-const n51 Bool)
(assert (= n51 (and |power of d3 is up| |leader of d3 is d3|)))
(declare-const n52 Bool)
(assert (= n52 (and |power of d2 is up| |leader of d2 is d2| (not n34))))
(declare-const n53 Bool)
(assert (= n53 (and |power of d3 is up| |leader of d3 is d3| (not n33))))
(declare-const n54 Bool)
(assert (= n54 (and (not n47) (or n52 n53 (and (not n46) (or (not |power of d1 is up|)
    (not |leader of d1 is none|) (and |power of d2 is up| (not |leader of d2 is none|) (not n34))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n33))))))))
(declare-const n55 Bool)
(assert (= n55 (and |power of d1 is up| |leader of d1 is d1| (not n34))))
(declare-const n56 Bool)
(assert (= n56 (and |power of d3 is up| |leader of d3 is d3| (not n32))))
(declare-const n57 Bool)
(assert (= n57 (and (not n49) (or n55 n56 (and (not n48) (or (not |power of d2 is up|)
    (not |leader of d2 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n34))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n32))))))))
(declare-const n58 Bool)
(assert (= n58 (and |power of d1 is up| |leader of d1 is d1| (not n33))))
(declare-const n59 Bool)
(assert (= n59 (and |power of d2 is up| |leader of d2 is d2| (not n32))))
(declare-const n60 Bool)
(assert (= n60 (and (not n51) (or n58 n59 (and (not n50) (or (not |power of d3 is up|)
    (not |leader of d3 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n33))
    (and |power of d2 is up| (not |leader of d2 is none|) (not n32))))))))
(declare-const n61 Bool)
(assert (= n61 (and (not |number of d2 is 2|) (not |number of d2 is 3|))))
(declare-const n62 Bool)
(assert (= n62 (and (not |number of d1 is 2|) (not |number of d1 is 3|))))
(declare-const n63 Bool)
(assert (= n63 (and (or (not |number of d1 is 3|) (not |number of d2 is 2|)) (or
    (not |number of d2 is 1|) n62))))
(declare-const n64 Bool)
(assert (= n64 (and |priority of d1 is 3| |priority of d2 is 2|)))
(declare-const n65 Bool)
(assert (= n65 (and (not |priority of d1 is 2|) (not |priority of d1 is 3|))))
(declare-const n66 Bool)
(assert (= n66 (and |priority of d2 is 1| (not n65))))
(declare-const n67 Bool)
(assert (= n67 (and |priority of d1 is 2| |priority of d2 is 3|)))
(declare-const n68 Bool)
(assert (= n68 (and (not |priority of d2 is 2|) (not |priority of d2 is 3|))))
(declare-const n69 Bool)
(assert (= n69 (and |priority of d1 is 1| (not n68))))
(declare-const n70 Bool)
(assert (= n70 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (or (and |number of d1 is 2|
    |number of d2 is 3|) (and |number of d1 is 1| (not n61)) n63))) (not n67) (not n69))))
(declare-const n71 Bool)
(assert (= n71 (and (not n34) (not n57) (not n64) (not n66) (not n70))))
(declare-const n72 Bool)
(assert (= n72 (and (not |number of d3 is 2|) (not |number of d3 is 3|))))
(declare-const n73 Bool)
(assert (= n73 (and (or (not |number of d1 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n62))))
(declare-const n74 Bool)
(assert (= n74 (and |priority of d1 is 3| |priority of d3 is 2|)))
(declare-const n75 Bool)
(assert (= n75 (and |priority of d3 is 1| (not n65))))
(declare-const n76 Bool)
(assert (= n76 (and |priority of d1 is 2| |priority of d3 is 3|)))
(declare-const n77 Bool)
(assert (= n77 (and (not |priority of d3 is 2|) (not |priority of d3 is 3|))))
(declare-const n78 Bool)
(assert (= n78 (and |priority of d1 is 1| (not n77))))
(declare-const n79 Bool)
(assert (= n79 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (or (and |number of d1 is 2|
    |number of d3 is 3|) (and |number of d1 is 1| (not n72)) n73))) (not n76) (not n78))))
(declare-const n80 Bool)
(assert (= n80 (and (not n33) (not n60) (not n74) (not n75) (not n79))))
(declare-const n81 Bool)
(assert (= n81 (and (not n64) (not n66) (or |d2 senior to d1| (and (not |d1 senior to d2|) (not n63))))))
(declare-const n82 Bool)
(assert (= n82 (and (not n34) (not n54) (not n67) (not n69) (not n81))))
(declare-const n83 Bool)
(assert (= n83 (and (or (not |number of d2 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n61))))
(declare-const n84 Bool)
(assert (= n84 (and |priority of d2 is 3| |priority of d3 is 2|)))
(declare-const n85 Bool)
(assert (= n85 (and |priority of d3 is 1| (not n68))))
(declare-const n86 Bool)
(assert (= n86 (and |priority of d2 is 2| |priority of d3 is 3|)))
(declare-const n87 Bool)
(assert (= n87 (and |priority of d2 is 1| (not n77))))
(declare-const n88 Bool)
(assert (= n88 (and (or |d2 senior to d3| (and (not |d3 senior to d2|) (or (and |number of d2 is 2|
    |number of d3 is 3|) (and |number of d2 is 1| (not n72)) n83))) (not n86) (not n87))))
(declare-const n89 Bool)
(assert (= n89 (and (not n32) (not n60) (not n84) (not n85) (not n88))))
(declare-const n90 Bool)
(assert (= n90 (and (not n74) (not n75) (or |d3 senior to d1| (and (not |d1 senior to d3|) (not n73))))))
(declare-const n91 Bool)
(assert (= n91 (and (not n33) (not n54) (not n76) (not n78) (not n90))))
(declare-const n92 Bool)
(assert (= n92 (and (not n84) (not n85) (or |d3 senior to d2| (and (not |d2 senior to d3|) (not n83))))))
(declare-const n93 Bool)
(assert (= n93 (and (not n32) (not n57) (not n86) (not n87) (not n92))))
(declare-const n94 Bool)
(assert (= n94 (and |power of d1 is up| |leader of d1 is d1| (not n54) (not n71) (not n80))))
(declare-const n95 Bool)
(assert (= n95 (and |power of d2 is up| |leader of d2 is d2| (not n57) (not n82) (not n89))))
(declare-const n96 Bool)
(assert (= n96 (and |power of d3 is up| |leader of d3 is d3| (not n60) (not n91) (not n93))))
(declare-const n97 Bool)
(assert (= n97 (and |leader of d1 is d2| (not n34) n95)))
(declare-const n98 Bool)
(assert (= n98 (and |leader of d1 is d3| (not n33) n96)))
(declare-const n99 Bool)
(assert (= n99 (and |leader of d2 is d1| (not n34) n94)))
(declare-const n100 Bool)
(assert (= n100 (and |leader of d2 is d3| (not n32) n96)))
(declare-const n101 Bool)
(assert (= n101 (and |leader of d3 is d1| (not n33) n94)))
(declare-const n102 Bool)
(assert (= n102 (and |leader of d3 is d2| (not n32) n95)))
(declare-const n103 Bool)
(assert (= n103 (and (or (not |number of d1 is 1|) (not |number of d2 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d2 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d2 is 3|)))))
(declare-const n104 Bool)
(assert (= n104 (and (not n49) (or (not |leader of d2 is d1|) n34) (or (not |leader of d2 is d3|)
    n32))))
(declare-const n105 Bool)
(assert (= n105 (and |leader of d1 is d1| |leader of d2 is d1|)))
(declare-const n106 Bool)
(assert (= n106 (and |leader of d1 is d2| |leader of d2 is d2|)))
(declare-const n107 Bool)
(assert (= n107 (and |leader of d1 is d3| |leader of d2 is d3|)))
(declare-const n108 Bool)
(assert (= n108 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n48)
    (not n67) (not n69) (not n81))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n94 n97 n98 n104 n105 n106 n107))))
(declare-const n109 Bool)
(assert (= n109 (and (not n34) (not n103) (not n108))))
(declare-const n110 Bool)
(assert (= n110 (and (or (not |number of d1 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d3 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n111 Bool)
(assert (= n111 (and (not n51) (or (not |leader of d3 is d1|) n33) (or (not |leader of d3 is d2|)
    n32))))
(declare-const n112 Bool)
(assert (= n112 (and |leader of d1 is d1| |leader of d3 is d1|)))
(declare-const n113 Bool)
(assert (= n113 (and |leader of d1 is d2| |leader of d3 is d2|)))
(declare-const n114 Bool)
(assert (= n114 (and |leader of d1 is d3| |leader of d3 is d3|)))
(declare-const n115 Bool)
(assert (= n115 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n50)
    (not n76) (not n78) (not n90))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n94 n97 n98 n111 n112 n113 n114))))
(declare-const n116 Bool)
(assert (= n116 (and (not n33) (not n110) (not n115))))
(declare-const n117 Bool)
(assert (= n117 (and |power of d1 is up| (not |leader of d1 is none|) (or n47 n52 n53) (not n94)
    (not n97) (not n98))))
(declare-const n118 Bool)
(assert (= n118 (and (not n109) (not n116) n117)))
(declare-const n119 Bool)
(assert (= n119 (and (not n47) (or (not |leader of d1 is d2|) n34) (or (not |leader of d1 is d3|)
    n33))))
(declare-const n120 Bool)
(assert (= n120 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n46)
    (not n64) (not n66) (not n70))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n95 n99 n100 n105 n106 n107 n119))))
(declare-const n121 Bool)
(assert (= n121 (and (not n34) (not n103) (not n120))))
(declare-const n122 Bool)
(assert (= n122 (and (or (not |number of d2 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d2 is 2|) (not |number of d3 is 2|)) (or (not |number of d2 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n123 Bool)
(assert (= n123 (and |power of d2 is up| |leader of d2 is none| (or n50 n86 n87 n92))))
(declare-const n124 Bool)
(assert (= n124 (and |leader of d2 is d1| |leader of d3 is d1|)))
(declare-const n125 Bool)
(assert (= n125 (and |leader of d2 is d2| |leader of d3 is d2|)))
(declare-const n126 Bool)
(assert (= n126 (and |leader of d2 is d3| |leader of d3 is d3|)))
(declare-const n127 Bool)
(assert (= n127 (and (not n123) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n95 n99 n100 n111 n124 n125 n126))))
(declare-const n128 Bool)
(assert (= n128 (and (not n32) (not n122) (not n127))))
(declare-const n129 Bool)
(assert (= n129 (and |power of d2 is up| (not |leader of d2 is none|) (or n49 n55 n56) (not n95)
    (not n99) (not n100))))
(declare-const n130 Bool)
(assert (= n130 (and (not n121) (not n128) n129)))
(declare-const n131 Bool)
(assert (= n131 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n46)
    (not n74) (not n75) (not n79))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n96 n101 n102 n112 n113 n114 n119))))
(declare-const n132 Bool)
(assert (= n132 (and (not n33) (not n110) (not n131))))
(declare-const n133 Bool)
(assert (= n133 (and |power of d3 is up| |leader of d3 is none| (or n48 n84 n85 n88))))
(declare-const n134 Bool)
(assert (= n134 (and (not n133) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n96 n101 n102 n104 n124 n125 n126))))
(declare-const n135 Bool)
(assert (= n135 (and (not n32) (not n122) (not n134))))
(declare-const n136 Bool)
(assert (= n136 (and |power of d3 is up| (not |leader of d3 is none|) (or n51 n58 n59) (not n96)
    (not n101) (not n102))))
(declare-const n137 Bool)
(assert (= n137 (and (not n132) (not n135) n136)))
(declare-const n138 Bool)
(assert (= n138 (and |power of d2 is up| |leader of d2 is d2| (not n45))))
(declare-const n139 Bool)
(assert (= n139 (and |power of d3 is up| |leader of d3 is d3| (not n44))))
(declare-const n140 Bool)
(assert (= n140 (and (not n47) (or n138 n139 (and (not n46) (or (not |power of d1 is up|)
    (not |leader of d1 is none|) (and |power of d2 is up| (not |leader of d2 is none|) (not n45))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n44))))))))
(declare-const n141 Bool)
(assert (= n141 (and |power of d1 is up| |leader of d1 is d1| (not n45))))
(declare-const n142 Bool)
(assert (= n142 (and |power of d3 is up| |leader of d3 is d3| (not n43))))
(declare-const n143 Bool)
(assert (= n143 (and (not n49) (or n141 n142 (and (not n48) (or (not |power of d2 is up|)
    (not |leader of d2 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n45))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n43))))))))
(declare-const n144 Bool)
(assert (= n144 (and |power of d1 is up| |leader of d1 is d1| (not n44))))
(declare-const n145 Bool)
(assert (= n145 (and |power of d2 is up| |leader of d2 is d2| (not n43))))
(declare-const n146 Bool)
(assert (= n146 (and (not n51) (or n144 n145 (and (not n50) (or (not |power of d3 is up|)
    (not |leader of d3 is none|) (and |power of d1 is up| (not |leader of d1 is none|) (not n44))
    (and |power of d2 is up| (not |leader of d2 is none|) (not n43))))))))
(declare-const n147 Bool)
(assert (= n147 (and (not |number of d1 is 2'|) (not |number of d1 is 3'|))))
(declare-const n148 Bool)
(assert (= n148 (and (or (not |number of d2 is 2|) (not |number of d1 is 3'|)) (or
    (not |number of d2 is 1|) n147))))
(declare-const n149 Bool)
(assert (= n149 (and |priority of d2 is 2| |priority of d1 is 3'|)))
(declare-const n150 Bool)
(assert (= n150 (and (not |priority of d1 is 2'|) (not |priority of d1 is 3'|))))
(declare-const n151 Bool)
(assert (= n151 (and |priority of d2 is 1| (not n150))))
(declare-const n152 Bool)
(assert (= n152 (and |priority of d2 is 3| |priority of d1 is 2'|)))
(declare-const n153 Bool)
(assert (= n153 (and |priority of d1 is 1'| (not n68))))
(declare-const n154 Bool)
(assert (= n154 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (or (and |number of d2 is 3|
    |number of d1 is 2'|) (and |number of d1 is 1'| (not n61)) n148))) (not n152) (not n153))))
(declare-const n155 Bool)
(assert (= n155 (and (not n45) (not n143) (not n149) (not n151) (not n154))))
(declare-const n156 Bool)
(assert (= n156 (and (or (not |number of d3 is 2|) (not |number of d1 is 3'|)) (or
    (not |number of d3 is 1|) n147))))
(declare-const n157 Bool)
(assert (= n157 (and |priority of d3 is 2| |priority of d1 is 3'|)))
(declare-const n158 Bool)
(assert (= n158 (and |priority of d3 is 1| (not n150))))
(declare-const n159 Bool)
(assert (= n159 (and |priority of d3 is 3| |priority of d1 is 2'|)))
(declare-const n160 Bool)
(assert (= n160 (and |priority of d1 is 1'| (not n77))))
(declare-const n161 Bool)
(assert (= n161 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (or (and |number of d3 is 3|
    |number of d1 is 2'|) (and |number of d1 is 1'| (not n72)) n156))) (not n159) (not n160))))
(declare-const n162 Bool)
(assert (= n162 (and (not n44) (not n146) (not n157) (not n158) (not n161))))
(declare-const n163 Bool)
(assert (= n163 (and (not n149) (not n151) (or |d2 senior to d1| (and (not |d1 senior to d2|)
    (not n148))))))
(declare-const n164 Bool)
(assert (= n164 (and (not n45) (not n140) (not n152) (not n153) (not n163))))
(declare-const n165 Bool)
(assert (= n165 (and (not n43) (not n84) (not n85) (not n88) (not n146))))
(declare-const n166 Bool)
(assert (= n166 (and (not n157) (not n158) (or |d3 senior to d1| (and (not |d1 senior to d3|)
    (not n156))))))
(declare-const n167 Bool)
(assert (= n167 (and (not n44) (not n140) (not n159) (not n160) (not n166))))
(declare-const n168 Bool)
(assert (= n168 (and (not n43) (not n86) (not n87) (not n92) (not n143))))
(declare-const n169 Bool)
(assert (= n169 (and |power of d1 is up| |leader of d1 is d1| (not n140) (not n155) (not n162))))
(declare-const n170 Bool)
(assert (= n170 (and |power of d2 is up| |leader of d2 is d2| (not n143) (not n164) (not n165))))
(declare-const n171 Bool)
(assert (= n171 (and |power of d3 is up| |leader of d3 is d3| (not n146) (not n167) (not n168))))
(declare-const n172 Bool)
(assert (= n172 (and |leader of d1 is d2| (not n45) n170)))
(declare-const n173 Bool)
(assert (= n173 (and |leader of d1 is d3| (not n44) n171)))
(declare-const n174 Bool)
(assert (= n174 (and |leader of d2 is d1| (not n45) n169)))
(declare-const n175 Bool)
(assert (= n175 (and |leader of d2 is d3| (not n43) n171)))
(declare-const n176 Bool)
(assert (= n176 (and |leader of d3 is d1| (not n44) n169)))
(declare-const n177 Bool)
(assert (= n177 (and |leader of d3 is d2| (not n43) n170)))
(declare-const n178 Bool)
(assert (= n178 (and (or (not |number of d2 is 1|) (not |number of d1 is 1'|)) (or
    (not |number of d2 is 2|) (not |number of d1 is 2'|)) (or (not |number of d2 is 3|)
    (not |number of d1 is 3'|)))))
(declare-const n179 Bool)
(assert (= n179 (and (not n49) (or (not |leader of d2 is d1|) n45) (or (not |leader of d2 is d3|)
    n43))))
(declare-const n180 Bool)
(assert (= n180 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n48)
    (not n152) (not n153) (not n163))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n105 n106 n107 n169 n172 n173 n179))))
(declare-const n181 Bool)
(assert (= n181 (and (not n45) (not n178) (not n180))))
(declare-const n182 Bool)
(assert (= n182 (and (or (not |number of d3 is 1|) (not |number of d1 is 1'|)) (or
    (not |number of d3 is 2|) (not |number of d1 is 2'|)) (or (not |number of d3 is 3|)
    (not |number of d1 is 3'|)))))
(declare-const n183 Bool)
(assert (= n183 (and (not n51) (or (not |leader of d3 is d1|) n44) (or (not |leader of d3 is d2|)
    n43))))
(declare-const n184 Bool)
(assert (= n184 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n50)
    (not n159) (not n160) (not n166))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n112 n113 n114 n169 n172 n173 n183))))
(declare-const n185 Bool)
(assert (= n185 (and (not n44) (not n182) (not n184))))
(declare-const n186 Bool)
(assert (= n186 (and |power of d1 is up| (not |leader of d1 is none|) (or n47 n138 n139) (not n169)
    (not n172) (not n173))))
(declare-const n187 Bool)
(assert (= n187 (and (not n181) (not n185) n186)))
(declare-const n188 Bool)
(assert (= n188 (and (not n47) (or (not |leader of d1 is d2|) n45) (or (not |leader of d1 is d3|)
    n44))))
(declare-const n189 Bool)
(assert (= n189 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n46)
    (not n149) (not n151) (not n154))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n105 n106 n107 n170 n174 n175 n188))))
(declare-const n190 Bool)
(assert (= n190 (and (not n45) (not n178) (not n189))))
(declare-const n191 Bool)
(assert (= n191 (and (not n123) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n124 n125 n126 n170 n174 n175 n183))))
(declare-const n192 Bool)
(assert (= n192 (and (not n43) (not n122) (not n191))))
(declare-const n193 Bool)
(assert (= n193 (and |power of d2 is up| (not |leader of d2 is none|) (or n49 n141 n142) (not n170)
    (not n174) (not n175))))
(declare-const n194 Bool)
(assert (= n194 (and (not n190) (not n192) n193)))
(declare-const n195 Bool)
(assert (= n195 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n46)
    (not n157) (not n158) (not n161))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n112 n113 n114 n171 n176 n177 n188))))
(declare-const n196 Bool)
(assert (= n196 (and (not n44) (not n182) (not n195))))
(declare-const n197 Bool)
(assert (= n197 (and (not n133) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n124 n125 n126 n171 n176 n177 n179))))
(declare-const n198 Bool)
(assert (= n198 (and (not n43) (not n122) (not n197))))
(declare-const n199 Bool)
(assert (= n199 (and |power of d3 is up| (not |leader of d3 is none|) (or n51 n144 n145) (not n171)
    (not n176) (not n177))))
(declare-const n200 Bool)
(assert (= n200 (and (not n196) (not n198) n199)))
(declare-const n201 Bool)
(assert (= n201 (and |power of d1 is up| (not n140) (not n155) (not n162) (not n181) (not n185)
    (not n186))))
(declare-const n202 Bool)
(assert (= n202 (and |power of d1 is up| (not n45) (not n143) (not n164) (not n165) (not n185)
    (not n186) (or n178 n180))))
(declare-const n203 Bool)
(assert (= n203 (and |power of d1 is up| (not n44) (not n146) (not n167) (not n168) (not n181)
    (not n186) (or n182 n184))))
(declare-const n204 Bool)
(assert (= n204 (and |power of d2 is up| (not n45) (not n140) (not n155) (not n162) (not n192)
    (not n193) (or n178 n189))))
(declare-const n205 Bool)
(assert (= n205 (and |power of d2 is up| (not n143) (not n164) (not n165) (not n190) (not n192)
    (not n193))))
(declare-const n206 Bool)
(assert (= n206 (and |power of d2 is up| (not n43) (not n146) (not n167) (not n168) (not n190)
    (not n193) (or n122 n191))))
(declare-const n207 Bool)
(assert (= n207 (and |power of d3 is up| (not n44) (not n140) (not n155) (not n162) (not n198)
    (not n199) (or n182 n195))))
(declare-const n208 Bool)
(assert (= n208 (and |power of d3 is up| (not n43) (not n143) (not n164) (not n165) (not n196)
    (not n199) (or n122 n197))))
(declare-const n209 Bool)
(assert (= n209 (and |power of d3 is up| (not n146) (not n167) (not n168) (not n196) (not n198)
    (not n199))))
(declare-const n210 Bool)
(assert (= n210 (and |power of d1 is starting| (not n109) (not n116))))
(declare-const n211 Bool)
(assert (= n211 (and |power of d1 is up| (not n54) (not n71) (not n80) (not n109) (not n116)
    (not n117))))
(declare-const n212 Bool)
(assert (= n212 (and |power of d1 is up| (not n34) (not n57) (not n82) (not n89) (not n116)
    (not n117) (or n103 n108))))
(declare-const n213 Bool)
(assert (= n213 (and |power of d1 is up| (not n33) (not n60) (not n91) (not n93) (not n109)
    (not n117) (or n110 n115))))
(declare-const n214 Bool)
(assert (= n214 (and |power of d2 is up| (not n34) (not n54) (not n71) (not n80) (not n128)
    (not n129) (or n103 n120))))
(declare-const n215 Bool)
(assert (= n215 (and |power of d2 is up| (not n57) (not n82) (not n89) (not n121) (not n128)
    (not n129))))
(declare-const n216 Bool)
(assert (= n216 (and |power of d2 is up| (not n32) (not n60) (not n91) (not n93) (not n121)
    (not n129) (or n122 n127))))
(declare-const n217 Bool)
(assert (= n217 (and |power of d3 is up| (not n33) (not n54) (not n71) (not n80) (not n135)
    (not n136) (or n110 n131))))
(declare-const n218 Bool)
(assert (= n218 (and |power of d3 is up| (not n32) (not n57) (not n82) (not n89) (not n132)
    (not n136) (or n122 n134))))
(declare-const n219 Bool)
(assert (= n219 (and |power of d3 is up| (not n60) (not n91) (not n93) (not n132) (not n135)
    (not n136))))
(declare-const n220 Bool)
(assert (= n220 (and (or (not |priority of d1 is 1|) (not |priority of d1 is 1'|)) (or
    (not |priority of d1 is 2|) (not |priority of d1 is 2'|)) (or (not |priority of d1 is 3|)
    (not |priority of d1 is 3'|)))))
(declare-const n221 Bool)
(assert (= n221 (xor |d1/2 enabled| |d1/2 enabled'|)))
(declare-const n222 Bool)
(assert (= n222 (and (or (not |side of d1/2 is none|) (not |side of d1/2 is none'|)) (or
    (not |side of d1/2 is east|) (not |side of d1/2 is east'|)) (or (not |side of d1/2 is west|)
    (not |side of d1/2 is west'|)))))
(declare-const n223 Bool)
(assert (= n223 (and (or (not |operational side of d1/2 is none|)
    (not |operational side of d1/2 is none'|)) (or (not |operational side of d1/2 is east|)
    (not |operational side of d1/2 is east'|)) (or (not |operational side of d1/2 is west|)
    (not |operational side of d1/2 is west'|)))))
(declare-const n224 Bool)
(assert (= n224 (xor |d1/3 enabled| |d1/3 enabled'|)))
(declare-const n225 Bool)
(assert (= n225 (and (or (not |side of d1/3 is none|) (not |side of d1/3 is none'|)) (or
    (not |side of d1/3 is east|) (not |side of d1/3 is east'|)) (or (not |side of d1/3 is west|)
    (not |side of d1/3 is west'|)))))
(declare-const n226 Bool)
(assert (= n226 (and (or (not |operational side of d1/3 is none|)
    (not |operational side of d1/3 is none'|)) (or (not |operational side of d1/3 is east|)
    (not |operational side of d1/3 is east'|)) (or (not |operational side of d1/3 is west|)
    (not |operational side of d1/3 is west'|)))))
(declare-const n227 Bool)
(assert (= n227 (and (not n220) (not n221) (not n222) (not n223) (not n224) (not n225) (not n226))))
(declare-const n228 Bool)
(assert (= n228 (and (or n118 n210 (and |power of d1 is off| (not n109) (not n116) (not n117)) n227)
    (not n18) (or (and |power of d1 is off| (not n109) (not n116) (not n117) (not n181) (not n185)
    (not n186)) (and (or n187 (and |power of d1 is starting| (not n181) (not n185))) (or n118 n210))
    (and |power of d1 is up| (not n109) (not n116) (not n117) (not n181) (not n185) (not n186)) (and
    (not n118) (not n187) (or |power of d1 is held| n181 n185) (or |power of d1 is held| n109 n116)))
    (or (and (ite |power of d1 is up| (and (not n201) (not n202) (not n203)) |leader of d1 is none|)
    (ite |power of d1 is up| (and (not n211) (not n212) (not n213)) |leader of d1 is none|)) (and
    (ite |power of d1 is up| n201 |leader of d1 is d1|) (ite |power of d1 is up| n211
    |leader of d1 is d1|)) (and (ite |power of d1 is up| n202 |leader of d1 is d2|) (ite
    |power of d1 is up| n212 |leader of d1 is d2|)) (and (ite |power of d1 is up| n203
    |leader of d1 is d3|) (ite |power of d1 is up| n213 |leader of d1 is d3|))) (or (and
    |power of d2 is off| (not n121) (not n128) (not n129) (not n190) (not n192) (not n193)) (and (or
    n194 (and |power of d2 is starting| (not n190) (not n192))) (or n130 (and
    |power of d2 is starting| (not n121) (not n128)))) (and |power of d2 is up| (not n121)
    (not n128) (not n129) (not n190) (not n192) (not n193)) (and (not n130) (not n194) (or
    |power of d2 is held| n190 n192) (or |power of d2 is held| n121 n128))) (or (and (ite
    |power of d2 is up| (and (not n204) (not n205) (not n206)) |leader of d2 is none|) (ite
    |power of d2 is up| (and (not n214) (not n215) (not n216)) |leader of d2 is none|)) (and (ite
    |power of d2 is up| n204 |leader of d2 is d1|) (ite |power of d2 is up| n214
    |leader of d2 is d1|)) (and (ite |power of d2 is up| n205 |leader of d2 is d2|) (ite
    |power of d2 is up| n215 |leader of d2 is d2|)) (and (ite |power of d2 is up| n206
    |leader of d2 is d3|) (ite |power of d2 is up| n216 |leader of d2 is d3|))) (or (and
    |power of d3 is off| (not n132) (not n135) (not n136) (not n196) (not n198) (not n199)) (and (or
    n200 (and |power of d3 is starting| (not n196) (not n198))) (or n137 (and
    |power of d3 is starting| (not n132) (not n135)))) (and |power of d3 is up| (not n132)
    (not n135) (not n136) (not n196) (not n198) (not n199)) (and (not n137) (not n200) (or
    |power of d3 is held| n196 n198) (or |power of d3 is held| n132 n135))) (or (and (ite
    |power of d3 is up| (and (not n207) (not n208) (not n209)) |leader of d3 is none|) (ite
    |power of d3 is up| (and (not n217) (not n218) (not n219)) |leader of d3 is none|)) (and (ite
    |power of d3 is up| n207 |leader of d3 is d1|) (ite |power of d3 is up| n217
    |leader of d3 is d1|)) (and (ite |power of d3 is up| n208 |leader of d3 is d2|) (ite
    |power of d3 is up| n218 |leader of d3 is d2|)) (and (ite |power of d3 is up| n209
    |leader of d3 is d3|) (ite |power of d3 is up| n219 |leader of d3 is d3|))) (or (and (or
    (not |d1 senior to d2|) n187 n194) (or (not |d1 senior to d2|) n118 n130)) (and
    |d1 senior to d2| (not n118) (not n130) (not n187) (not n194))) (or (and (or
    (not |d1 senior to d3|) n187 n200) (or (not |d1 senior to d3|) n118 n137)) (and
    |d1 senior to d3| (not n118) (not n137) (not n187) (not n200))) (or (and (or
    (not |d2 senior to d1|) n187 n194) (or (not |d2 senior to d1|) n118 n130)) (and
    |d2 senior to d1| (not n118) (not n130) (not n187) (not n194))) (or (and (or
    (not |d2 senior to d3|) n194 n200) (or (not |d2 senior to d3|) n130 n137)) (and
    |d2 senior to d3| (not n130) (not n137) (not n194) (not n200))) (or (and (or
    (not |d3 senior to d1|) n187 n200) (or (not |d3 senior to d1|) n118 n137)) (and
    |d3 senior to d1| (not n118) (not n137) (not n187) (not n200))) (or (and (or
    (not |d3 senior to d2|) n194 n200) (or (not |d3 senior to d2|) n130 n137)) (and
    |d3 senior to d2| (not n130) (not n137) (not n194) (not n200))) (= (and (not n109) (not n116))
    (and (not n181) (not n185))) (= n118 n187) (= (and (not n121) (not n128)) (and (not n190)
    (not n192))) (= n130 n194) (= (and (not n132) (not n135)) (and (not n196) (not n198))) (= n137
    n200) (= n26 n39) (= n29 n40) (= n30 n41) (= n31 n42))))
(declare-const n229 Bool)
(assert (= n229 (and (or (not |next number of d1 is 1|) (not |number of d1 is 1'|)) (or
    (not |next number of d1 is 2|) (not |number of d1 is 2'|)) (or (not |next number of d1 is 3|)
    (not |number of d1 is 3'|)))))
(declare-const n230 Bool)
(assert (= n230 (and (not |startup priority of d1 is 1|) (not n229))))
(declare-const n231 Bool)
(assert (= n231 (and |startup priority of d1 is 2| (not n229))))
(declare-const n232 Bool)
(assert (= n232 (and |startup priority of d1 is 3| (not n229))))
(declare-const n233 Bool)
(assert (= n233 (and (not |d1/2 enabled in startup|) (not n229))))
(declare-const n234 Bool)
(assert (= n234 (and |startup side of d1/2 is none| (not n229))))
(declare-const n235 Bool)
(assert (= n235 (and (not |startup side of d1/2 is east|) (not n229))))
(declare-const n236 Bool)
(assert (= n236 (and |startup side of d1/2 is west| (not n229))))
(declare-const n237 Bool)
(assert (= n237 (and (not |d1/3 enabled in startup|) (not n229))))
(declare-const n238 Bool)
(assert (= n238 (and |startup side of d1/3 is none| (not n229))))
(declare-const n239 Bool)
(assert (= n239 (and (not |startup side of d1/3 is east|) (not n229))))
(declare-const n240 Bool)
(assert (= n240 (and |startup side of d1/3 is west| (not n229))))
(declare-const n241 Bool)
(assert (= n241 (and (or (not |number of d1 is 1|) (not |next number of d1 is 1|)) (or
    (not |number of d1 is 2|) (not |next number of d1 is 2|)) (or (not |number of d1 is 3|)
    (not |next number of d1 is 3|)))))
(declare-const n242 Bool)
(assert (= n242 (and (not |startup priority of d1 is 1|) (not n241))))
(declare-const n243 Bool)
(assert (= n243 (and |startup priority of d1 is 2| (not n241))))
(declare-const n244 Bool)
(assert (= n244 (and |startup priority of d1 is 3| (not n241))))
(declare-const n245 Bool)
(assert (= n245 (and (not |d1/2 enabled in startup|) (not n241))))
(declare-const n246 Bool)
(assert (= n246 (and |startup side of d1/2 is none| (not n241))))
(declare-const n247 Bool)
(assert (= n247 (and (not |startup side of d1/2 is east|) (not n241))))
(declare-const n248 Bool)
(assert (= n248 (and |startup side of d1/2 is west| (not n241))))
(declare-const n249 Bool)
(assert (= n249 (and (not |d1/3 enabled in startup|) (not n241))))
(declare-const n250 Bool)
(assert (= n250 (and |startup side of d1/3 is none| (not n241))))
(declare-const n251 Bool)
(assert (= n251 (and (not |startup side of d1/3 is east|) (not n241))))
(declare-const n252 Bool)
(assert (= n252 (and |startup side of d1/3 is west| (not n241))))
(declare-const n253 Bool)
(assert (= n253 (and (not |power of d1 is off|) (not |power of d1 is starting|) (not n227))))
(declare-const n254 Bool)
(assert (= n254 (and (not n18) (not n253))))
(declare-const n255 Bool)
(assert (= n255 (and (not |power of d1 is off|) (not |power of d1 is starting|) (or (and (or
    (not (ite n12 |priority of d1 is 1'| (or (not |number of d1 is 1'|) |priority of d1 is 1'|)))
    (not (ite n12 |priority of d1 is 1| (or (not |number of d1 is 1|) |priority of d1 is 1|)))) (or
    (not (ite n12 |priority of d1 is 2'| (and |number of d1 is 1'| |priority of d1 is 2'|)))
    (not (ite n12 |priority of d1 is 2| (and |number of d1 is 1| |priority of d1 is 2|)))) (or
    (not (ite n12 |priority of d1 is 3'| (and |number of d1 is 1'| |priority of d1 is 3'|)))
    (not (ite n12 |priority of d1 is 3| (and |number of d1 is 1| |priority of d1 is 3|))))) (xor
    (ite n12 |d1/2 enabled'| (or (not |number of d1 is 1'|) |d1/2 enabled'|)) (ite n12
    |d1/2 enabled| (or (not |number of d1 is 1|) |d1/2 enabled|))) (and (or (not (ite n12
    |side of d1/2 is none'| (and |number of d1 is 1'| |side of d1/2 is none'|))) (not (ite n12
    |side of d1/2 is none| (and |number of d1 is 1| |side of d1/2 is none|)))) (or (not (ite n12
    |side of d1/2 is east'| (or (not |number of d1 is 1'|) |side of d1/2 is east'|))) (not (ite n12
    |side of d1/2 is east| (or (not |number of d1 is 1|) |side of d1/2 is east|)))) (or (not (ite
    n12 |side of d1/2 is west'| (and |number of d1 is 1'| |side of d1/2 is west'|))) (not (ite n12
    |side of d1/2 is west| (and |number of d1 is 1| |side of d1/2 is west|))))) (and (or (not (ite
    n12 |operational side of d1/2 is none'| (and |number of d1 is 1'|
    |operational side of d1/2 is none'|))) (not (ite n12 |operational side of d1/2 is none| (and
    |number of d1 is 1| |operational side of d1/2 is none|)))) (or (not (ite n12
    |operational side of d1/2 is east'| (or (not |number of d1 is 1'|)
    |operational side of d1/2 is east'|))) (not (ite n12 |operational side of d1/2 is east| (or
    (not |number of d1 is 1|) |operational side of d1/2 is east|)))) (or (not (ite n12
    |operational side of d1/2 is west'| (and |number of d1 is 1'|
    |operational side of d1/2 is west'|))) (not (ite n12 |operational side of d1/2 is west| (and
    |number of d1 is 1| |operational side of d1/2 is west|))))) (xor (ite n12 |d1/3 enabled'| (or
    (not |number of d1 is 1'|) |d1/3 enabled'|)) (ite n12 |d1/3 enabled| (or
    (not |number of d1 is 1|) |d1/3 enabled|))) (and (or (not (ite n12 |side of d1/3 is none'| (and
    |number of d1 is 1'| |side of d1/3 is none'|))) (not (ite n12 |side of d1/3 is none| (and
    |number of d1 is 1| |side of d1/3 is none|)))) (or (not (ite n12 |side of d1/3 is east'| (or
    (not |number of d1 is 1'|) |side of d1/3 is east'|))) (not (ite n12 |side of d1/3 is east| (or
    (not |number of d1 is 1|) |side of d1/3 is east|)))) (or (not (ite n12 |side of d1/3 is west'|
    (and |number of d1 is 1'| |side of d1/3 is west'|))) (not (ite n12 |side of d1/3 is west| (and
    |number of d1 is 1| |side of d1/3 is west|))))) (and (or (not (ite n12
    |operational side of d1/3 is none'| (and |number of d1 is 1'|
    |operational side of d1/3 is none'|))) (not (ite n12 |operational side of d1/3 is none| (and
    |number of d1 is 1| |operational side of d1/3 is none|)))) (or (not (ite n12
    |operational side of d1/3 is east'| (or (not |number of d1 is 1'|)
    |operational side of d1/3 is east'|))) (not (ite n12 |operational side of d1/3 is east| (or
    (not |number of d1 is 1|) |operational side of d1/3 is east|)))) (or (not (ite n12
    |operational side of d1/3 is west'| (and |number of d1 is 1'|
    |operational side of d1/3 is west'|))) (not (ite n12 |operational side of d1/3 is west| (and
    |number of d1 is 1| |operational side of d1/3 is west|)))))))))
(declare-const n256 Bool)
(assert (= n256 (and (not n255) (or (and (or |power of d1 is up| |power of d1 is held|
    |number of d1 is 1'|) (or |power of d1 is up| |power of d1 is held| |number of d1 is 1|)) (and
    (not |power of d1 is up|) (not |power of d1 is held|) |number of d1 is 2| |number of d1 is 2'|)
    (and (not |power of d1 is up|) (not |power of d1 is held|) |number of d1 is 3|
    |number of d1 is 3'|)) (or (and (ite n12 |startup priority of d1 is 1| (or
    |startup priority of d1 is 1| (not |number of d1 is 1'|))) (ite n12
    |startup priority of d1 is 1| (or (not |number of d1 is 1|) |startup priority of d1 is 1|)))
    (and (ite n12 |startup priority of d1 is 2| (and |startup priority of d1 is 2|
    |number of d1 is 1'|)) (ite n12 |startup priority of d1 is 2| (and |number of d1 is 1|
    |startup priority of d1 is 2|))) (and (ite n12 |startup priority of d1 is 3| (and
    |startup priority of d1 is 3| |number of d1 is 1'|)) (ite n12 |startup priority of d1 is 3| (and
    |number of d1 is 1| |startup priority of d1 is 3|)))) (= (ite n12 |d1/2 enabled in startup| (or
    |d1/2 enabled in startup| (not |number of d1 is 1'|))) (ite n12 |d1/2 enabled in startup| (or
    (not |number of d1 is 1|) |d1/2 enabled in startup|))) (or (and (ite n12
    |startup side of d1/2 is none| (and |startup side of d1/2 is none| |number of d1 is 1'|)) (ite
    n12 |startup side of d1/2 is none| (and |number of d1 is 1| |startup side of d1/2 is none|)))
    (and (ite n12 |startup side of d1/2 is east| (or |startup side of d1/2 is east|
    (not |number of d1 is 1'|))) (ite n12 |startup side of d1/2 is east| (or
    (not |number of d1 is 1|) |startup side of d1/2 is east|))) (and (ite n12
    |startup side of d1/2 is west| (and |startup side of d1/2 is west| |number of d1 is 1'|)) (ite
    n12 |startup side of d1/2 is west| (and |number of d1 is 1| |startup side of d1/2 is west|))))
    (= (ite n12 |d1/3 enabled in startup| (or |d1/3 enabled in startup| (not |number of d1 is 1'|)))
    (ite n12 |d1/3 enabled in startup| (or (not |number of d1 is 1|) |d1/3 enabled in startup|)))
    (or (and (ite n12 |startup side of d1/3 is none| (and |startup side of d1/3 is none|
    |number of d1 is 1'|)) (ite n12 |startup side of d1/3 is none| (and |number of d1 is 1|
    |startup side of d1/3 is none|))) (and (ite n12 |startup side of d1/3 is east| (or
    |startup side of d1/3 is east| (not |number of d1 is 1'|))) (ite n12
    |startup side of d1/3 is east| (or (not |number of d1 is 1|) |startup side of d1/3 is east|)))
    (and (ite n12 |startup side of d1/3 is west| (and |startup side of d1/3 is west|
    |number of d1 is 1'|)) (ite n12 |startup side of d1/3 is west| (and |number of d1 is 1|
    |startup side of d1/3 is west|)))))))
(declare-const n257 Bool)
(assert (= n257 (and (not n18) (or |power of d1 is off| |power of d1 is starting| (and (not n221)
    (not n222) (not n223) (not n224) (not n225) (not n226) (or (and (or |power of d1 is up|
    |power of d1 is held| |priority of d1 is 1'|) (or |power of d1 is up| |power of d1 is held|
    |priority of d1 is 1|)) (and (not |power of d1 is up|) (not |power of d1 is held|)
    |priority of d1 is 2| |priority of d1 is 2'|) (and (not |power of d1 is up|)
    (not |power of d1 is held|) |priority of d1 is 3| |priority of d1 is 3'|)))))))
(declare-const n258 Bool)
(assert (= n258 (and (not n18) (or |power of d1 is off| |power of d1 is starting| (and (not n220)
    (not n222) (not n223) (not n224) (not n225) (not n226) (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) (not |d1/2 enabled|) (not |d1/2 enabled'|)) (and (or
    |power of d1 is up| |power of d1 is held| |d1/2 enabled'|) (or |power of d1 is up|
    |power of d1 is held| |d1/2 enabled|))))))))
(declare-const n259 Bool)
(assert (= n259 (and (not n18) (or |power of d1 is off| |power of d1 is starting| (and (not n220)
    (not n222) (not n223) (not n224) (not n225) (not n226) (or (and (or |power of d1 is up|
    |power of d1 is held| (not |d1/2 enabled'|)) (or |power of d1 is up| |power of d1 is held|
    (not |d1/2 enabled|))) (and (not |power of d1 is up|) (not |power of d1 is held|) |d1/2 enabled|
    |d1/2 enabled'|)))))))
(declare-const n260 Bool)
(assert (= n260 (and (not |power of d1 is up|) (not |power of d1 is held|) |side of d1/2 is east|
    |side of d1/2 is east'|)))
(declare-const n261 Bool)
(assert (= n261 (and (not |power of d1 is up|) (not |power of d1 is held|)
    |operational side of d1/2 is east| |operational side of d1/2 is east'|)))
(declare-const n262 Bool)
(assert (= n262 (and (not n18) (or |power of d1 is off| |power of d1 is starting| (and (not n220)
    (not n221) (not n224) (not n225) (not n226) (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) |side of d1/2 is none| |side of d1/2 is none'|) n260 (and (or
    |power of d1 is up| |power of d1 is held| |side of d1/2 is west'|) (or |power of d1 is up|
    |power of d1 is held| |side of d1/2 is west|))) (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) |operational side of d1/2 is none|
    |operational side of d1/2 is none'|) n261 (and (or |power of d1 is up| |power of d1 is held|
    |operational side of d1/2 is west'|) (or |power of d1 is up| |power of d1 is held|
    |operational side of d1/2 is west|))))))))
(declare-const n263 Bool)
(assert (= n263 (and (not n18) (or |power of d1 is off| |power of d1 is starting| (and (not n220)
    (not n221) (not n224) (not n225) (not n226) (or n260 (and (or |power of d1 is up|
    |power of d1 is held| |side of d1/2 is none'|) (or |power of d1 is up| |power of d1 is held|
    |side of d1/2 is none|)) (and (not |power of d1 is up|) (not |power of d1 is held|)
    |side of d1/2 is west| |side of d1/2 is west'|)) (or n261 (and (or |power of d1 is up|
    |power of d1 is held| |operational side of d1/2 is none'|) (or |power of d1 is up|
    |power of d1 is held| |operational side of d1/2 is none|)) (and (not |power of d1 is up|)
    (not |power of d1 is held|) |operational side of d1/2 is west|
    |operational side of d1/2 is west'|)))))))
(declare-const n264 Bool)
(assert (= n264 (and (not n12) (or |power of d1 is up| |power of d1 is held| n45) (or
    |power of d1 is up| |power of d1 is held| n44))))
(declare-const n265 Bool)
(assert (= n265 (and (not n12) (or |power of d1 is up| |power of d1 is held| n34) (or
    |power of d1 is up| |power of d1 is held| n33))))
(declare-const n266 Bool)
(assert (= n266 (and (or |power of d1 is off| |power of d1 is starting| (and (not n220) (not n221)
    (not n222) (not n224) (not n225) (or (and (ite n264 |side of d1/2 is none'|
    |operational side of d1/2 is none'|) (ite n265 |side of d1/2 is none|
    |operational side of d1/2 is none|)) (and (ite n264 |side of d1/2 is east'|
    |operational side of d1/2 is east'|) (ite n265 |side of d1/2 is east|
    |operational side of d1/2 is east|)) (and (ite n264 |side of d1/2 is west'|
    |operational side of d1/2 is west'|) (ite n265 |side of d1/2 is west|
    |operational side of d1/2 is west|))) (or (and (ite n264 |side of d1/3 is none'|
    |operational side of d1/3 is none'|) (ite n265 |side of d1/3 is none|
    |operational side of d1/3 is none|)) (and (ite n264 |side of d1/3 is east'|
    |operational side of d1/3 is east'|) (ite n265 |side of d1/3 is east|
    |operational side of d1/3 is east|)) (and (ite n264 |side of d1/3 is west'|
    |operational side of d1/3 is west'|) (ite n265 |side of d1/3 is west|
    |operational side of d1/3 is west|))))) (not n18) (or (and (ite n264 (ite n45
    |operational side of d2/1 is none| |side of d2/1 is none|) |operational side of d2/1 is none|)
    (ite n265 (ite n34 |operational side of d2/1 is none| |side of d2/1 is none|)
    |operational side of d2/1 is none|)) (and (ite n264 (ite n45 |operational side of d2/1 is east|
    |side of d2/1 is east|) |operational side of d2/1 is east|) (ite n265 (ite n34
    |operational side of d2/1 is east| |side of d2/1 is east|) |operational side of d2/1 is east|))
    (and (ite n264 (ite n45 |operational side of d2/1 is west| |side of d2/1 is west|)
    |operational side of d2/1 is west|) (ite n265 (ite n34 |operational side of d2/1 is west|
    |side of d2/1 is west|) |operational side of d2/1 is west|))) (or (and (ite n264 (ite n45
    |operational side of d2/3 is none| |side of d2/3 is none|) |operational side of d2/3 is none|)
    (ite n265 (ite n34 |operational side of d2/3 is none| |side of d2/3 is none|)
    |operational side of d2/3 is none|)) (and (ite n264 (ite n45 |operational side of d2/3 is east|
    |side of d2/3 is east|) |operational side of d2/3 is east|) (ite n265 (ite n34
    |operational side of d2/3 is east| |side of d2/3 is east|) |operational side of d2/3 is east|))
    (and (ite n264 (ite n45 |operational side of d2/3 is west| |side of d2/3 is west|)
    |operational side of d2/3 is west|) (ite n265 (ite n34 |operational side of d2/3 is west|
    |side of d2/3 is west|) |operational side of d2/3 is west|))) (or (and (ite n264 (ite n44
    |operational side of d3/1 is none| |side of d3/1 is none|) |operational side of d3/1 is none|)
    (ite n265 (ite n33 |operational side of d3/1 is none| |side of d3/1 is none|)
    |operational side of d3/1 is none|)) (and (ite n264 (ite n44 |operational side of d3/1 is east|
    |side of d3/1 is east|) |operational side of d3/1 is east|) (ite n265 (ite n33
    |operational side of d3/1 is east| |side of d3/1 is east|) |operational side of d3/1 is east|))
    (and (ite n264 (ite n44 |operational side of d3/1 is west| |side of d3/1 is west|)
    |operational side of d3/1 is west|) (ite n265 (ite n33 |operational side of d3/1 is west|
    |side of d3/1 is west|) |operational side of d3/1 is west|))) (or (and (ite n264 (ite n44
    |operational side of d3/2 is none| |side of d3/2 is none|) |operational side of d3/2 is none|)
    (ite n265 (ite n33 |operational side of d3/2 is none| |side of d3/2 is none|)
    |operational side of d3/2 is none|)) (and (ite n264 (ite n44 |operational side of d3/2 is east|
    |side of d3/2 is east|) |operational side of d3/2 is east|) (ite n265 (ite n33
    |operational side of d3/2 is east| |side of d3/2 is east|) |operational side of d3/2 is east|))
    (and (ite n264 (ite n44 |operational side of d3/2 is west| |side of d3/2 is west|)
    |operational side of d3/2 is west|) (ite n265 (ite n33 |operational side of d3/2 is west|
    |side of d3/2 is west|) |operational side of d3/2 is west|))))))
(declare-const n267 Bool)
(assert (= n267 (and (not n253) (not n18) (or (and (ite n264 |priority of d1 is 1'|
    |startup priority of d1 is 1|) (ite n265 |priority of d1 is 1| |startup priority of d1 is 1|))
    (and (ite n264 |priority of d1 is 2'| |startup priority of d1 is 2|) (ite n265
    |priority of d1 is 2| |startup priority of d1 is 2|)) (and (ite n264 |priority of d1 is 3'|
    |startup priority of d1 is 3|) (ite n265 |priority of d1 is 3| |startup priority of d1 is 3|)))
    (or (and (ite n264 (ite n45 |startup priority of d2 is 1| |priority of d2 is 1|)
    |startup priority of d2 is 1|) (ite n265 (ite n34 |startup priority of d2 is 1|
    |priority of d2 is 1|) |startup priority of d2 is 1|)) (and (ite n264 (ite n45
    |startup priority of d2 is 2| |priority of d2 is 2|) |startup priority of d2 is 2|) (ite n265
    (ite n34 |startup priority of d2 is 2| |priority of d2 is 2|) |startup priority of d2 is 2|))
    (and (ite n264 (ite n45 |startup priority of d2 is 3| |priority of d2 is 3|)
    |startup priority of d2 is 3|) (ite n265 (ite n34 |startup priority of d2 is 3|
    |priority of d2 is 3|) |startup priority of d2 is 3|))) (or (and (ite n264 (ite n44
    |startup priority of d3 is 1| |priority of d3 is 1|) |startup priority of d3 is 1|) (ite n265
    (ite n33 |startup priority of d3 is 1| |priority of d3 is 1|) |startup priority of d3 is 1|))
    (and (ite n264 (ite n44 |startup priority of d3 is 2| |priority of d3 is 2|)
    |startup priority of d3 is 2|) (ite n265 (ite n33 |startup priority of d3 is 2|
    |priority of d3 is 2|) |startup priority of d3 is 2|)) (and (ite n264 (ite n44
    |startup priority of d3 is 3| |priority of d3 is 3|) |startup priority of d3 is 3|) (ite n265
    (ite n33 |startup priority of d3 is 3| |priority of d3 is 3|) |startup priority of d3 is 3|)))
    (= (ite n264 |d1/2 enabled'| |d1/2 enabled in startup|) (ite n265 |d1/2 enabled|
    |d1/2 enabled in startup|)) (or (and (ite n264 |side of d1/2 is none'|
    |startup side of d1/2 is none|) (ite n265 |side of d1/2 is none| |startup side of d1/2 is none|))
    (and (ite n264 |side of d1/2 is east'| |startup side of d1/2 is east|) (ite n265
    |side of d1/2 is east| |startup side of d1/2 is east|)) (and (ite n264 |side of d1/2 is west'|
    |startup side of d1/2 is west|) (ite n265 |side of d1/2 is west| |startup side of d1/2 is west|)))
    (= (ite n264 |d1/3 enabled'| |d1/3 enabled in startup|) (ite n265 |d1/3 enabled|
    |d1/3 enabled in startup|)) (or (and (ite n264 |side of d1/3 is none'|
    |startup side of d1/3 is none|) (ite n265 |side of d1/3 is none| |startup side of d1/3 is none|))
    (and (ite n264 |side of d1/3 is east'| |startup side of d1/3 is east|) (ite n265
    |side of d1/3 is east| |startup side of d1/3 is east|)) (and (ite n264 |side of d1/3 is west'|
    |startup side of d1/3 is west|) (ite n265 |side of d1/3 is west| |startup side of d1/3 is west|)))
    (= (ite n264 (ite n45 |d2/1 enabled in startup| |d2/1 enabled|) |d2/1 enabled in startup|) (ite
    n265 (ite n34 |d2/1 enabled in startup| |d2/1 enabled|) |d2/1 enabled in startup|)) (or (and
    (ite n264 (ite n45 |startup side of d2/1 is none| |side of d2/1 is none|)
    |startup side of d2/1 is none|) (ite n265 (ite n34 |startup side of d2/1 is none|
    |side of d2/1 is none|) |startup side of d2/1 is none|)) (and (ite n264 (ite n45
    |startup side of d2/1 is east| |side of d2/1 is east|) |startup side of d2/1 is east|) (ite n265
    (ite n34 |startup side of d2/1 is east| |side of d2/1 is east|) |startup side of d2/1 is east|))
    (and (ite n264 (ite n45 |startup side of d2/1 is west| |side of d2/1 is west|)
    |startup side of d2/1 is west|) (ite n265 (ite n34 |startup side of d2/1 is west|
    |side of d2/1 is west|) |startup side of d2/1 is west|))) (= (ite n264 (ite n45
    |d2/3 enabled in startup| |d2/3 enabled|) |d2/3 enabled in startup|) (ite n265 (ite n34
    |d2/3 enabled in startup| |d2/3 enabled|) |d2/3 enabled in startup|)) (or (and (ite n264 (ite
    n45 |startup side of d2/3 is none| |side of d2/3 is none|) |startup side of d2/3 is none|) (ite
    n265 (ite n34 |startup side of d2/3 is none| |side of d2/3 is none|)
    |startup side of d2/3 is none|)) (and (ite n264 (ite n45 |startup side of d2/3 is east|
    |side of d2/3 is east|) |startup side of d2/3 is east|) (ite n265 (ite n34
    |startup side of d2/3 is east| |side of d2/3 is east|) |startup side of d2/3 is east|)) (and
    (ite n264 (ite n45 |startup side of d2/3 is west| |side of d2/3 is west|)
    |startup side of d2/3 is west|) (ite n265 (ite n34 |startup side of d2/3 is west|
    |side of d2/3 is west|) |startup side of d2/3 is west|))) (= (ite n264 (ite n44
    |d3/1 enabled in startup| |d3/1 enabled|) |d3/1 enabled in startup|) (ite n265 (ite n33
    |d3/1 enabled in startup| |d3/1 enabled|) |d3/1 enabled in startup|)) (or (and (ite n264 (ite
    n44 |startup side of d3/1 is none| |side of d3/1 is none|) |startup side of d3/1 is none|) (ite
    n265 (ite n33 |startup side of d3/1 is none| |side of d3/1 is none|)
    |startup side of d3/1 is none|)) (and (ite n264 (ite n44 |startup side of d3/1 is east|
    |side of d3/1 is east|) |startup side of d3/1 is east|) (ite n265 (ite n33
    |startup side of d3/1 is east| |side of d3/1 is east|) |startup side of d3/1 is east|)) (and
    (ite n264 (ite n44 |startup side of d3/1 is west| |side of d3/1 is west|)
    |startup side of d3/1 is west|) (ite n265 (ite n33 |startup side of d3/1 is west|
    |side of d3/1 is west|) |startup side of d3/1 is west|))) (= (ite n264 (ite n44
    |d3/2 enabled in startup| |d3/2 enabled|) |d3/2 enabled in startup|) (ite n265 (ite n33
    |d3/2 enabled in startup| |d3/2 enabled|) |d3/2 enabled in startup|)) (or (and (ite n264 (ite
    n44 |startup side of d3/2 is none| |side of d3/2 is none|) |startup side of d3/2 is none|) (ite
    n265 (ite n33 |startup side of d3/2 is none| |side of d3/2 is none|)
    |startup side of d3/2 is none|)) (and (ite n264 (ite n44 |startup side of d3/2 is east|
    |side of d3/2 is east|) |startup side of d3/2 is east|) (ite n265 (ite n33
    |startup side of d3/2 is east| |side of d3/2 is east|) |startup side of d3/2 is east|)) (and
    (ite n264 (ite n44 |startup side of d3/2 is west| |side of d3/2 is west|)
    |startup side of d3/2 is west|) (ite n265 (ite n33 |startup side of d3/2 is west|
    |side of d3/2 is west|) |startup side of d3/2 is west|))))))
(declare-const n268 Bool)
(assert (= n268 (and (or (and (not n230) (not n242)) (and |startup priority of d1 is 2| (not n229)
    (not n241)) (and |startup priority of d1 is 3| (not n229) (not n241))) (or (and
    (not |d1/2 enabled in startup|) (not n229) (not n241)) (and (not n233) (not n245))) (or (and
    |startup side of d1/2 is none| (not n229) (not n241)) (and (not n235) (not n247)) (and
    |startup side of d1/2 is west| (not n229) (not n241))) (or (and (not |d1/3 enabled in startup|)
    (not n229) (not n241)) (and (not n237) (not n249))) (or (and |startup side of d1/3 is none|
    (not n229) (not n241)) (and (not n239) (not n251)) (and |startup side of d1/3 is west|
    (not n229) (not n241))))))
(declare-const n269 Bool)
(assert (= n269 (and n228 (or |power of d1 is off| (and (or (and (ite |power of d1 is off|
    |priority of d1 is 1'| (not n230)) (ite |power of d1 is off| |priority of d1 is 1| (not n242)))
    (and (ite |power of d1 is off| |priority of d1 is 2'| n231) (ite |power of d1 is off|
    |priority of d1 is 2| n243)) (and (ite |power of d1 is off| |priority of d1 is 3'| n232) (ite
    |power of d1 is off| |priority of d1 is 3| n244))) (= (ite |power of d1 is off| |d1/2 enabled'|
    (not n233)) (ite |power of d1 is off| |d1/2 enabled| (not n245))) (or (and (ite
    |power of d1 is off| |side of d1/2 is none'| n234) (ite |power of d1 is off|
    |side of d1/2 is none| n246)) (and (ite |power of d1 is off| |side of d1/2 is east'| (not n235))
    (ite |power of d1 is off| |side of d1/2 is east| (not n247))) (and (ite |power of d1 is off|
    |side of d1/2 is west'| n236) (ite |power of d1 is off| |side of d1/2 is west| n248))) (or (and
    (ite |power of d1 is off| |operational side of d1/2 is none'| n234) (ite |power of d1 is off|
    |operational side of d1/2 is none| n246)) (and (ite |power of d1 is off|
    |operational side of d1/2 is east'| (not n235)) (ite |power of d1 is off|
    |operational side of d1/2 is east| (not n247))) (and (ite |power of d1 is off|
    |operational side of d1/2 is west'| n236) (ite |power of d1 is off|
    |operational side of d1/2 is west| n248))) (= (ite |power of d1 is off| |d1/3 enabled'|
    (not n237)) (ite |power of d1 is off| |d1/3 enabled| (not n249))) (or (and (ite
    |power of d1 is off| |side of d1/3 is none'| n238) (ite |power of d1 is off|
    |side of d1/3 is none| n250)) (and (ite |power of d1 is off| |side of d1/3 is east'| (not n239))
    (ite |power of d1 is off| |side of d1/3 is east| (not n251))) (and (ite |power of d1 is off|
    |side of d1/3 is west'| n240) (ite |power of d1 is off| |side of d1/3 is west| n252))) (or (and
    (ite |power of d1 is off| |operational side of d1/3 is none'| n238) (ite |power of d1 is off|
    |operational side of d1/3 is none| n250)) (and (ite |power of d1 is off|
    |operational side of d1/3 is east'| (not n239)) (ite |power of d1 is off|
    |operational side of d1/3 is east| (not n251))) (and (ite |power of d1 is off|
    |operational side of d1/3 is west'| n240) (ite |power of d1 is off|
    |operational side of d1/3 is west| n252))))) (or (and (ite |power of d1 is off|
    |number of d1 is 1'| |next number of d1 is 1|) (ite |power of d1 is off| |number of d1 is 1|
    |next number of d1 is 1|)) (and (ite |power of d1 is off| |number of d1 is 2'|
    |next number of d1 is 2|) (ite |power of d1 is off| |number of d1 is 2| |next number of d1 is 2|))
    (and (ite |power of d1 is off| |number of d1 is 3'| |next number of d1 is 3|) (ite
    |power of d1 is off| |number of d1 is 3| |next number of d1 is 3|))) (or (and (ite
    |power of d1 is off| |startup priority of d1 is 1| (not n230)) (ite |power of d1 is off|
    |startup priority of d1 is 1| (not n242))) (and (ite |power of d1 is off|
    |startup priority of d1 is 2| n231) (ite |power of d1 is off| |startup priority of d1 is 2| n243))
    (and (ite |power of d1 is off| |startup priority of d1 is 3| n232) (ite |power of d1 is off|
    |startup priority of d1 is 3| n244))) (= (ite |power of d1 is off| |d1/2 enabled in startup|
    (not n233)) (ite |power of d1 is off| |d1/2 enabled in startup| (not n245))) (or (and (ite
    |power of d1 is off| |startup side of d1/2 is none| n234) (ite |power of d1 is off|
    |startup side of d1/2 is none| n246)) (and (ite |power of d1 is off|
    |startup side of d1/2 is east| (not n235)) (ite |power of d1 is off|
    |startup side of d1/2 is east| (not n247))) (and (ite |power of d1 is off|
    |startup side of d1/2 is west| n236) (ite |power of d1 is off| |startup side of d1/2 is west|
    n248))) (= (ite |power of d1 is off| |d1/3 enabled in startup| (not n237)) (ite
    |power of d1 is off| |d1/3 enabled in startup| (not n249))) (or (and (ite |power of d1 is off|
    |startup side of d1/3 is none| n238) (ite |power of d1 is off| |startup side of d1/3 is none|
    n250)) (and (ite |power of d1 is off| |startup side of d1/3 is east| (not n239)) (ite
    |power of d1 is off| |startup side of d1/3 is east| (not n251))) (and (ite |power of d1 is off|
    |startup side of d1/3 is west| n240) (ite |power of d1 is off| |startup side of d1/3 is west|
    n252))) (or |s1 done| |halted| n254) (or |s2 done| |halted| n15 n16 n17) (or |s3 done| |halted|
    (and (not n18) (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held| n227))) (or |s4 done| |halted| n256) (or |s5 done| |halted| n257) (or
    |s6 done| |halted| n258) (or |s7 done| |halted| n259) (or |s8 done| |halted| n262) (or |s9 done|
    |halted| n263) (or |s10 done| |halted| n266) (= n264 n265) (or |s11 done| |halted| n267) (or
    |s12 done| |halted| n254) (or |s13 done| |halted| n254) (or |s14 done| |halted| n254) (or
    |s15 done| |halted| n254) (or (not |power of d1 is starting|) n268) (or
    (not |power of d2 is starting|) n254) (or (not |power of d3 is starting|) n254) (or
    (not |d1--d2 plugged|) |d1--d2 broken| (not |cable breaks left is 1|) n254) (or
    (not |d1--d3 plugged|) |d1--d3 broken| (not |cable breaks left is 1|) n254) (or
    (not |d2--d3 plugged|) |d2--d3 broken| (not |cable breaks left is 1|) n254) (or
    (not |rival plugged|) |rival broken| (not |cable breaks left is 1|) n254) (or
    (not |d1--d2 broken|) n254) (or (not |d1--d3 broken|) n254) (or (not |d2--d3 broken|) n254) (or
    (not |rival broken|) n254) (or (not |power of d1 is up|) (not |crashes left is 1|) n15 n16 n17)
    (or (not |power of d2 is up|) (not |crashes left is 1|) n254) (or (not |power of d3 is up|)
    (not |crashes left is 1|) n254) (or |s1 done| (not |omissions left is 1|) |halted| n254) (or
    |s2 done| (not |omissions left is 1|) |halted| n254) (or |s3 done| (not |omissions left is 1|)
    |halted| n254) (or |s4 done| (not |omissions left is 1|) |halted| n254) (or |s5 done|
    (not |omissions left is 1|) |halted| n254) (or |s6 done| (not |omissions left is 1|) |halted|
    n254) (or |s7 done| (not |omissions left is 1|) |halted| n254) (or |s8 done|
    (not |omissions left is 1|) |halted| n254) (or |s9 done| (not |omissions left is 1|) |halted|
    n254) (or |s10 done| (not |omissions left is 1|) |halted| n254) (or |s11 done|
    (not |omissions left is 1|) |halted| n254) (or |s12 done| (not |omissions left is 1|) |halted|
    n254) (or |s13 done| (not |omissions left is 1|) |halted| n254) (or
    (not |power of d1 is starting|) (not |late starts left is 1|) n268) (or
    (not |power of d2 is starting|) (not |late starts left is 1|) n254) (or
    (not |power of d3 is starting|) (not |late starts left is 1|) n254))))
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
; d1 has the same number in both.
(assert (not n18))
; And this is false: the same links have formed; a pass holds and restarts the same devices; the
; same events may happen, and the same steps are refused; and after a pass, any event or a cold
; start the two states differ in nothing but the same values of d1, and not even there when it is
; up.
(assert (not n269))
(check-sat)
(exit)
